package org.rigleaf.guidance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.rigleaf.figures.Amounts;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Yaml;

/** The files of the English wording, read with their amounts in the units of the reader. */
final class WordingFiles {
  private static final String FOLDER = "/templates/wording/en/";
  private static final Pattern AMOUNT = Pattern.compile("\\{amount:([^}]*)\\}");
  private static final Pattern SMALL_WORD = Pattern.compile("\\b[a-z]{2,}\\b");

  private final Amounts amounts;
  private final WordingCheck check;
  private final Set<String> smallWords = new HashSet<>();

  WordingFiles(Amounts amounts, WordingCheck check) {
    this.amounts = amounts;
    this.check = check;
  }

  /** The keys of one file; none after a problem. */
  Fields fields(String name) {
    String text = amounts(name);
    SMALL_WORD.matcher(text).results().forEach(word -> smallWords.add(word.group()));
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Optional<Node> root = Yaml.read(bytes, name, check.problems);
    boolean map = root.isPresent() && root.get() instanceof Node.Mapping;
    return map
        ? new Fields((Node.Mapping) root.get(), "", check.problems)
        : Fields.none("", new Problems());
  }

  /** True of a word that a file read so far writes small: no name of a person or a maker. */
  boolean small(String word) {
    return smallWords.contains(word);
  }

  /** A file with its amounts, such as {@code {amount:3 ft}}, written in our units. */
  private String amounts(String name) {
    return AMOUNT
        .matcher(new String(bytes(name), StandardCharsets.UTF_8))
        .replaceAll(m -> amount(m.group(1), name));
  }

  private String amount(String written, String name) {
    Optional<Quantity> quantity = Quantity.parse(written);
    if (quantity.isEmpty()) {
      String cure = "write a number with its unit, such as 3 ft";
      check.problem(Position.start(name), "", "'" + written + "' is no amount", cure);
    }
    return quantity.map(q -> amounts.text(q.value(), q.unit())).orElse(written);
  }

  private static byte[] bytes(String name) {
    try (InputStream in = WordingFiles.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no wording file " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
