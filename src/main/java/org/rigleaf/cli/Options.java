package org.rigleaf.cli;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.sheets.Paper;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What may be chosen of the printing. */
final class Options {
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
   * The sheets to print; all if none are named.
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
    return sheets.isEmpty() ? List.copyOf(Sheets.names()) : sheets;
  }

  /** The paper. */
  Paper paper() {
    return paper.paper;
  }
}
