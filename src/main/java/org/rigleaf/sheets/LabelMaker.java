package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rigleaf.guidance.Label;
import org.rigleaf.guidance.LabelTexts;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;

/** Lays the labels of a rig out on label sheets. */
public final class LabelMaker {
  private final Rig rig;
  private final BinderMaker maker;
  private final Wording wording;
  private final List<Label> labels;

  /** A maker for this rig. */
  public LabelMaker(Rig rig, BinderMaker maker, Wording wording) {
    this.rig = rig;
    this.maker = maker;
    this.wording = wording;
    this.labels = LabelTexts.of(rig, wording, maker.guide());
  }

  /** All labels, in the order in which one sticks them on. */
  public List<Label> labels() {
    return labels;
  }

  /**
   * The sheets; {@code draft} as for a binder.
   *
   * @param editions in which each label last changed, by id; this one for all others
   * @param profile what to name where a label is too full
   * @throws ProblemsFound if the words of a label do not fit on it; nothing is ever made smaller
   */
  public LabelSheets sheets(
      LabelGrid grid, boolean draft, Map<String, String> editions, String profile)
      throws ProblemsFound {
    checkFit(grid, profile);
    return new LabelSheets(
        rig.identity().name(),
        wording.phrase("kind-" + rig.identity().kind().trait()),
        maker.edition(),
        draft ? wording.phrase("draft") : "",
        grid,
        LabelFit.CLEAR_MM,
        LabelFit.CODE_WIDE,
        LabelFit.CODE,
        pages(grid, editions),
        grid.paper());
  }

  private void checkFit(LabelGrid grid, String profile) throws ProblemsFound {
    Problems problems = new Problems();
    LabelFit fit = new LabelFit(grid);
    labels.stream()
        .filter(l -> !fit.fits(l))
        .forEach(
            l ->
                problems.add(
                    Position.start(profile),
                    l.id(),
                    ("label " + l.code()).strip()
                        + " '"
                        + l.name()
                        + "' is too full for "
                        + grid.name(),
                    "shorten its words, or use larger labels with --labels"));
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
  }

  private List<List<LabelSheets.Cell>> pages(LabelGrid grid, Map<String, String> editions) {
    List<List<LabelSheets.Cell>> pages = new ArrayList<>();
    for (int from = 0; from < labels.size(); from += grid.cells()) {
      List<Label> here = labels.subList(from, Math.min(labels.size(), from + grid.cells()));
      List<LabelSheets.Cell> cells = new ArrayList<>();
      here.forEach(l -> cells.add(cell(l, grid, cells.size(), editions)));
      pages.add(List.copyOf(cells));
    }
    return pages;
  }

  private LabelSheets.Cell cell(
      Label label, LabelGrid grid, int cell, Map<String, String> editions) {
    double points = ReadingSize.points(label.feet());
    String now = String.valueOf(maker.edition().number());
    return new LabelSheets.Cell(
        label,
        editions.getOrDefault(label.id(), now),
        grid.left(cell),
        grid.top(cell),
        points,
        points * ReadingSize.WORD);
  }
}
