package org.rigleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.figures.Amounts;
import org.rigleaf.sheets.LabelGrid;
import org.rigleaf.sheets.Paper;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What may be chosen of the printing. */
final class Options {
  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "out",
      description = "Where the folder of a rig goes (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--sheets",
      split = ",",
      paramLabel = "SHEET",
      description = "Only these sheets, with commas between: ${COMPLETION-CANDIDATES}.",
      completionCandidates = SheetNames.class)
  private List<String> sheets = new ArrayList<>();

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "letter or a4 (default: ${DEFAULT-VALUE}).")
  private Sizes paper = Sizes.LETTER;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "us or metric (default: ${DEFAULT-VALUE}).")
  private Amounts units = Amounts.US;

  @Option(
      names = "--stay",
      paramLabel = "FILE",
      description = "The plan of this stay, in place of the one of the profile.")
  private Path stay;

  @Option(
      names = "--labels",
      paramLabel = "SHEET",
      description = "The label sheet: letter-30, a4-21 or letter-10, large (default: by paper).")
  private String labels;

  @CommandLine.Spec(CommandLine.Spec.Target.MIXEE)
  private CommandLine.Model.CommandSpec spec;

  /** Names for the help text. */
  static final class SheetNames extends ArrayList<String> {
    private static final long serialVersionUID = 1;

    SheetNames() {
      super(Sheets.names());
    }
  }

  private enum Sizes {
    LETTER(Paper.LETTER),
    A4(Paper.A4);

    private final Paper paper;

    Sizes(Paper paper) {
      this.paper = paper;
    }
  }

  /**
   * The sheets to print; all if none are named, the plan alone of a stay that is named.
   *
   * @throws ParameterException if there is no such sheet
   */
  List<String> sheets() {
    for (String name : sheets) {
      if (!Sheets.names().contains(name)) {
        throw new ParameterException(
            spec.commandLine(), "no sheet is called '" + name + "': use " + Sheets.names());
      }
    }
    if (!sheets.isEmpty()) {
      return sheets;
    }
    return stay == null ? List.copyOf(Sheets.names()) : List.of("stay");
  }

  /** The folder of a rig's sheets. */
  Path folder(Profile profile) {
    return out.resolve(profile.name());
  }

  /** The units that numbers are printed in. */
  Amounts units() {
    return units;
  }

  /** True if the files for other programs are wanted too. */
  boolean all() {
    return sheets.isEmpty() && stay == null;
  }

  /** The file of the stay to plan, if another than that of the profile. */
  Optional<Path> stay() {
    return Optional.ofNullable(stay);
  }

  /**
   * The label sheet that is named, else the usual one for the paper.
   *
   * @throws ParameterException if there is no such sheet
   */
  LabelGrid labels() {
    if (labels != null && !LabelGrid.all().containsKey(labels)) {
      throw new ParameterException(
          spec.commandLine(),
          "no label sheet is called '" + labels + "': use " + LabelGrid.all().keySet());
    }
    return labels == null ? LabelGrid.usual(paper()) : LabelGrid.all().get(labels);
  }

  /** The paper. */
  Paper paper() {
    return paper.paper;
  }
}
