package org.rigleaf.sheets;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/** Reads and writes JSON, with the same line breaks on every machine. */
final class Json {
  private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");

  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter().withObjectIndenter(LINES).withArrayIndenter(LINES))
          .build();

  private Json() {}

  /** The value as text that ends with a line break. */
  static String text(Object value) {
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value) + "\n";
  }
}
