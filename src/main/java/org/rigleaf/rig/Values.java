package org.rigleaf.rig;

import java.time.Month;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Nearest;
import org.rigleaf.source.Node;
import org.rigleaf.source.PartialDate;

/** Asks for words, dates, mentions of other things, yes or no, and values of a closed list. */
abstract class Values extends Quantities {
  private static final Pattern ADDRESS = Pattern.compile("https?://[!-~]+");

  /** What a QR code of 33 squares a side holds (version 4, level M: ISO/IEC 18004, table 7). */
  private static final int LONGEST_ADDRESS = 62;

  Values(Fields fields, String schemaPath, Reading reading) {
    super(fields, schemaPath, reading);
  }

  /** Free words that must be there. */
  public String required(String key) {
    Optional<String> words = words(key);
    if (words.isEmpty() && !reading.schema) {
      fields.problem(fields.at(), key, "this key is missing", "write '" + key + ": ...' here");
    }
    return words.orElse("");
  }

  /**
   * A value of an enum that must be there; a stand-in after a problem, so that the reading can go
   * on.
   */
  public <E extends Enum<E> & Choice> E requiredChoice(String key, Class<E> type) {
    Optional<E> choice = choice(key, type);
    if (!fields.has(key) && !reading.schema) {
      String all =
          Arrays.stream(type.getEnumConstants())
              .map(Choice::text)
              .collect(Collectors.joining(", "));
      fields.problem(fields.at(), key, "this key is missing", "one of: " + all);
    }
    return choice.orElse(type.getEnumConstants()[0]);
  }

  /** A month by its English name. */
  public Optional<Month> month(String key) {
    Optional<Node.Text> text = text(key);
    Optional<Month> month =
        text.flatMap(
            t ->
                Arrays.stream(Month.values())
                    .filter(m -> m.name().equalsIgnoreCase(t.value()))
                    .findFirst());
    if (text.isPresent() && month.isEmpty()) {
      fields.problem(
          text.get().at(), key, "'" + text.get().value() + "' is not a month", "write May");
    }
    month.ifPresent(m -> reading.texts.put(fields.pathOf(key), text.get().value()));
    return month;
  }

  /** Keys and words of the keeper's own. */
  public Map<String, String> free(String key) {
    mark(key);
    Map<String, String> words = new LinkedHashMap<>();
    Optional<Fields> group = fields.has(key) ? fields.group(key) : Optional.empty();
    group.ifPresent(g -> g.keys().forEach(k -> g.text(k).ifPresent(t -> words.put(k, t.value()))));
    return words;
  }

  /** Free words, one line. */
  public Optional<String> words(String key) {
    Optional<String> words = text(key).map(t -> t.value().strip());
    words.ifPresent(w -> reading.texts.put(fields.pathOf(key), w));
    return words;
  }

  /** The address of a page, which a phone reads off a small code. */
  public Optional<String> address(String key) {
    text(key).ifPresent(t -> address(t, key));
    return words(key);
  }

  private void address(Node.Text text, String key) {
    String address = text.value().strip();
    if (!ADDRESS.matcher(address).matches()) {
      String cure = "write it from https:// on, without blanks and accents";
      fields.problem(text.at(), key, "'" + address + "' is not the address of a page", cure);
    } else if (address.length() > LONGEST_ADDRESS) {
      String wrong = "its " + address.length() + " letters make a code too fine to scan";
      String cure = "use an address of at most " + LONGEST_ADDRESS + " letters";
      fields.problem(text.at(), key, wrong, cure);
    }
  }

  /** A list of free words. */
  public List<String> list(String key) {
    mark(key);
    List<String> words = fields.texts(key).stream().map(t -> t.value().strip()).toList();
    if (!words.isEmpty()) {
      reading.texts.put(fields.pathOf(key), String.join(", ", words));
    }
    return words;
  }

  /** Mentions of other things of the rig. */
  public List<Reference> references(String key) {
    mark(key);
    List<Reference> found =
        fields.texts(key).stream()
            .map(t -> new Reference(t.value().strip(), t.quoted(), fields.pathOf(key), t.at()))
            .toList();
    reading.references.addAll(found);
    if (!found.isEmpty()) {
      reading.texts.put(
          fields.pathOf(key),
          found.stream().map(Reference::text).collect(Collectors.joining(", ")));
    }
    return found;
  }

  /** A date, as exact as it is known. */
  public Optional<PartialDate> date(String key) {
    Optional<Node.Text> text = text(key);
    Optional<PartialDate> date = text.flatMap(t -> PartialDate.parse(t.value()));
    if (text.isPresent() && date.isEmpty()) {
      String cure = "write 2026-05-02, 2026-05, 2026 or 'week 14 of 2022'";
      fields.problem(text.get().at(), key, "'" + text.get().value() + "' is not a date", cure);
    }
    date.ifPresent(d -> reading.texts.put(fields.pathOf(key), text.get().value()));
    return date;
  }

  /** A date that must be there. */
  public Optional<PartialDate> requiredDate(String key) {
    if (!fields.has(key)) {
      fields.problem(fields.at(), key, "this key is missing", "write '" + key + ": 2026-05-02'");
    }
    return date(key);
  }

  /** True if keys with values stand under a key, and not a single text. */
  public boolean grouped(String key) {
    return fields.node(key).filter(Node.Mapping.class::isInstance).isPresent();
  }

  /** Yes, no or unknown. */
  public Answer yes(String key) {
    Optional<Node.Text> text = unmarked(key);
    if (reading.schema) {
      reading.traits.addAll(List.of(trait(key), trait(key) + ".no"));
    }
    if (text.isEmpty()) {
      return Answer.UNKNOWN;
    }
    switch (text.get().value()) {
      case "yes", "true" -> {
        reading.traits.add(trait(key));
        reading.texts.put(fields.pathOf(key), "yes"); // so that an item of a list can be asked
        return Answer.YES;
      }
      case "no", "false" -> {
        reading.traits.add(trait(key) + ".no");
        return Answer.NO;
      }
      default -> {
        fields.problem(
            text.get().at(),
            key,
            "'" + text.get().value() + "' is neither yes nor no",
            "write yes or no");
        return Answer.UNKNOWN;
      }
    }
  }

  /** One value of an enum. */
  public <E extends Enum<E> & Choice> Optional<E> choice(String key, Class<E> type) {
    possible(key, type);
    return text(key).flatMap(t -> choose(key, t, type));
  }

  /** Several values of an enum. */
  public <E extends Enum<E> & Choice> List<E> choices(String key, Class<E> type) {
    mark(key);
    possible(key, type);
    List<E> chosen =
        fields.texts(key).stream().flatMap(t -> choose(key, t, type).stream()).toList();
    if (chosen.size() > 1) { // all of them, where a page names what a thing runs on
      reading.texts.put(
          fields.pathOf(key), chosen.stream().map(Choice::text).collect(Collectors.joining(", ")));
    }
    return chosen;
  }

  private <E extends Enum<E> & Choice> Optional<E> choose(
      String key, Node.Text text, Class<E> type) {
    Optional<E> found =
        Arrays.stream(type.getEnumConstants())
            .filter(e -> e.text().equals(text.value()))
            .findFirst();
    if (found.isEmpty()) {
      List<String> all = Arrays.stream(type.getEnumConstants()).map(Choice::text).toList();
      String cure =
          Nearest.to(text.value(), all)
              .map(n -> "did you mean '" + n + "'?")
              .orElse("one of: " + String.join(", ", all));
      fields.problem(text.at(), key, "'" + text.value() + "' is not known here", cure);
    }
    found.ifPresent(e -> reading.traits.add(trait(key) + "." + e.trait()));
    found.ifPresent(e -> reading.texts.put(fields.pathOf(key), e.text()));
    return found;
  }

  private <E extends Enum<E> & Choice> void possible(String key, Class<E> type) {
    if (reading.schema) {
      Arrays.stream(type.getEnumConstants())
          .forEach(e -> reading.traits.add(trait(key) + "." + e.trait()));
      reading.choices.put(
          trait(key), Arrays.stream(type.getEnumConstants()).map(Choice::text).toList());
    }
  }
}
