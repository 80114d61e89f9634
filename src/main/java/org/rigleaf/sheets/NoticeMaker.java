package org.rigleaf.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.rigleaf.figures.Amounts;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Edition.Change;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.PartialDate;

/** Writes the notice of what a new edition changes. */
public final class NoticeMaker {

  private final Rig rig;
  private final BinderMaker maker;
  private final Wording wording;
  private final Comparison comparison;
  private final Function<Piece, String> cause;

  /**
   * A notice to be written.
   *
   * @param rig as it is now
   * @param cause of the change of a piece: {@code rig}, {@code wording} or {@code both}
   */
  public NoticeMaker(
      Rig rig,
      BinderMaker maker,
      Wording wording,
      Comparison comparison,
      Function<Piece, String> cause) {
    this.rig = rig;
    this.maker = maker;
    this.wording = wording;
    this.comparison = comparison;
    this.cause = cause;
  }

  /** The notice on this paper; {@code draft} as for a binder. */
  public Notice notice(Paper paper, boolean draft) {
    List<Notice.Swap> swaps = swaps();
    FigureChanges figures = new FigureChanges(wording, comparison.figures());
    return new Notice(
        rig.identity().name(),
        wording.phrase("kind-" + rig.identity().kind().trait()),
        draft ? wording.phrase("draft") : "",
        edition(comparison.before()),
        edition(comparison.now()),
        wording.phrase("notice-cause-" + causeOf(swaps)),
        rig.edition().changes().stream().map(NoticeMaker::work).toList(),
        maker.guide().told(comparison.before().traits(), differing()),
        figures.lines(),
        AddedWeight.told(rig, comparison, wording),
        figures.others(),
        figures.moreOthers(),
        lists(),
        comparison.whole() ? wording.phrase("notice-whole") : "",
        swaps,
        wording.phrase(rig.privateWords().isEmpty() ? "notice-always" : "notice-always-owner"),
        paper);
  }

  private static Edition edition(Issued issued) {
    return new Edition(issued.number(), date(issued.date()), issued.note());
  }

  /** A day {@code 2026-05-02} as printed; empty if it is. */
  public static String date(String day) {
    return day.isEmpty() ? "" : Amounts.date(LocalDate.parse(day));
  }

  private static String causeOf(List<Notice.Swap> swaps) {
    Set<String> causes = new TreeSet<>();
    swaps.forEach(s -> causes.add(s.cause()));
    return causes.isEmpty() ? "none" : causes.size() > 1 ? "both" : causes.iterator().next();
  }

  /** What goes in, in the order of printing, then what only comes out. */
  private List<Notice.Swap> swaps() {
    Stream<Piece> gone =
        comparison.remove().stream().filter(p -> comparison.now().find(p).isEmpty());
    return Stream.concat(comparison.insert().stream(), gone).map(this::swap).toList();
  }

  private Notice.Swap swap(Piece p) {
    return new Notice.Swap(
        p.kind(),
        p.id(),
        p.code(),
        p.title(),
        edition(comparison.before().find(p)),
        edition(comparison.now().find(p)),
        cause.apply(p));
  }

  private String edition(Optional<Piece> piece) {
    return piece.map(p -> p.edition() + " · " + date(p.date())).orElse("");
  }

  private static Notice.Work work(Change c) {
    return new Notice.Work(
        c.what(),
        c.why().orElse(""),
        c.fittedBy().orElse(""),
        c.fittedOn().map((PartialDate d) -> Amounts.date(d)).orElse(""),
        c.adds().known() ? c.adds().written() : "");
  }

  /** Paths of the facts that differ. */
  private Set<String> differing() {
    Map<String, String> before = comparison.before().facts();
    Map<String, String> now = comparison.now().facts();
    Set<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(now.keySet());
    paths.removeIf(p -> now.containsKey(p) && now.get(p).equals(before.get(p)));
    return paths;
  }

  // ---- cautions, steps, findings

  private List<Notice.Listed> lists() {
    Issued before = comparison.before();
    Issued now = comparison.now();
    return Stream.of(
            listed("cautions", before.cautions(), now.cautions()),
            listed("steps", before.steps(), now.steps()),
            listed("findings", before.findings(), now.findings()))
        .flatMap(List::stream)
        .filter(l -> !l.items().isEmpty())
        .toList();
  }

  private List<Notice.Listed> listed(
      String what, Map<String, String> before, Map<String, String> now) {
    return List.of(
        listed(what + "-added", Comparison.added(before, now).map(now::get).toList()),
        listed(what + "-withdrawn", Comparison.added(now, before).map(before::get).toList()));
  }

  private Notice.Listed listed(String id, List<String> items) {
    return new Notice.Listed(id, wording.phrase("notice-" + id), items);
  }
}
