package org.rigleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.rigleaf.figures.Amounts;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.CardSize;
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
      names = "--card",
      paramLabel = "SIZE",
      converter = CardSizes.class,
      description = "half-letter, 4x6, a5 or a6: size of a card (default: half-letter; on A4, a5).")
  private CardSize card;

  @Option(names = "--single", description = "One card a page, of its own size.")
  private boolean single;

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

  private static final class CardSizes implements CommandLine.ITypeConverter<CardSize> {
    private static final Map<String, CardSize> SIZES =
        Map.of(
            "half-letter", CardSize.HALF_LETTER,
            "4x6", CardSize.FOUR_BY_SIX,
            "a5", CardSize.A5,
            "a6", CardSize.A6);

    @Override
    public CardSize convert(String name) {
      CardSize size = SIZES.get(name.toLowerCase(Locale.ROOT));
      if (size == null) {
        throw new CommandLine.TypeConversionException(
            "no card is called '" + name + "': use one of " + new TreeSet<>(SIZES.keySet()));
      }
      return size;
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
   * The sheets to print; the usual ones if none are named, the plan alone of a stay that is named.
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
    return stay == null ? Sheets.usual() : List.of("stay");
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

  /** How cards stand on the paper; half of it each if no size is named. */
  CardSheet cards() {
    CardSize half = paper == Sizes.A4 ? CardSize.A5 : CardSize.HALF_LETTER;
    CardSize size = Optional.ofNullable(card).orElse(half);
    return single ? CardSheet.single(size) : CardSheet.on(paper(), size);
  }

  /** The paper. */
  Paper paper() {
    return paper.paper;
  }
}
