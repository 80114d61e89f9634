package org.rigleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.print.CardTooTall;
import org.rigleaf.print.Imprint;
import org.rigleaf.print.MissingGlyph;
import org.rigleaf.print.Press;
import org.rigleaf.print.Templates;
import org.rigleaf.sheets.Digests;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problem;
import org.rigleaf.source.ProblemsFound;

/** The finished files of one profile, made in memory, written whole and moved into place. */
record Output(Map<String, byte[]> files) {
  static final Templates TEMPLATES = new Templates();
  private static final Press PRESS = new Press(TEMPLATES);
  private static final LocalDate NO_DATE =
      LocalDate.of(2000, 1, 1); // for an edition without a date; the clock is never read

  /**
   * Prints the sheets.
   *
   * @throws ProblemsFound if the profile holds a character that no font has
   * @throws IOException if the profile cannot be read again to find that character
   */
  static Output of(Issuing issuing, Options options) throws ProblemsFound, IOException {
    Profile profile = issuing.profile();
    Map<String, byte[]> files = documents(issuing, options, options.sheets());
    if (options.all()) {
      String figures = profile.maker().figuresFile();
      files.put("figures.json", figures.getBytes(StandardCharsets.UTF_8));
      String calendar = profile.maker().calendarFile();
      files.put("upkeep.ics", calendar.getBytes(StandardCharsets.UTF_8));
    }
    return new Output(files);
  }

  /** The notice alone. */
  static Output notice(Issuing issuing, Options options) throws ProblemsFound, IOException {
    return new Output(documents(issuing, options, List.of("notice")));
  }

  private static Map<String, byte[]> documents(Issuing issuing, Options options, List<String> names)
      throws ProblemsFound, IOException {
    Sheets sheets =
        new Sheets(issuing, issuing.profile().maker(options.units()), options, TEMPLATES);
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      Optional<Made> made = sheets.make(name);
      if (made.isPresent()) {
        files.put(name + ".html", made.get().html().getBytes(StandardCharsets.UTF_8));
        files.put(name + ".pdf", pdf(made.get(), issuing.profile()));
      }
    }
    return files;
  }

  private static byte[] pdf(Made made, Profile profile) throws ProblemsFound, IOException {
    long id = Long.parseUnsignedLong(Digests.digest(made.html()).substring(0, 16), 16);
    LocalDate date = profile.rig().edition().date().orElse(NO_DATE);
    String name = profile.file().getFileName().toString();
    Imprint imprint = new Imprint(date, id, name, profile.plain());
    try {
      return made.cards().isPresent()
          ? PRESS.cards(made.html(), made.cards().get(), imprint)
          : PRESS.pdf(made.html(), made.paper(), imprint);
    } catch (CardTooTall tall) {
      Position file = Position.start(profile.file().toString());
      String cure = "choose a larger --card, or say less on it";
      throw new ProblemsFound(List.of(new Problem(file, "", tall.getMessage(), cure)));
    } catch (MissingGlyph missing) {
      throw new ProblemsFound(SignSearch.problems(profile.file(), missing.character()));
    }
  }

  /**
   * Writes the files into a folder. Each is moved into place when it is whole.
   *
   * @throws IOException if the machine refuses
   */
  void writeTo(Path folder) throws IOException {
    Files.createDirectories(folder);
    Map<Path, Path> moves = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path whole = folder.resolve("." + file.getKey() + ".part");
        moves.put(whole, folder.resolve(file.getKey()));
        Files.write(whole, file.getValue());
      }
      for (Map.Entry<Path, Path> move : moves.entrySet()) {
        Files.move(
            move.getKey(),
            move.getValue(),
            StandardCopyOption.REPLACE_EXISTING,
            StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      for (Path part : moves.keySet()) {
        Files.deleteIfExists(part);
      }
    }
  }
}
