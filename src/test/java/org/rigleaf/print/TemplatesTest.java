package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.sheets.Paper;

/** Templates see record accessors and nothing else, and never switch escaping off. */
class TemplatesTest {
  private static final Pattern FORBIDDEN =
      Pattern.compile("\\?(interpret|eval|eval_json|no_esc|new|api)\\b|<#noautoesc|<#outputformat");

  @Test
  void noTemplateReachesBeyondItsRecordsOrSwitchesEscapingOff() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("templates"))) {
      List<Path> templates = all.filter(p -> p.toString().matches(".*\\.ftlh?")).toList();
      assertTrue(templates.size() >= 10);
      List<Path> wrong = templates.stream().filter(TemplatesTest::forbidden).toList();
      assertEquals(List.of(), wrong);
    }
  }

  private static boolean forbidden(Path template) {
    try {
      return FORBIDDEN.matcher(Files.readString(template)).find();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void onlyTheComponentsOfARecordAreExposed() throws NoSuchMethodException {
    var access = new RecordAccess().forClass(Paper.class);
    assertTrue(access.isMethodExposed(Paper.class.getMethod("widthMm")));
    assertFalse(access.isMethodExposed(Object.class.getMethod("getClass")));
    assertFalse(access.isMethodExposed(Paper.class.getMethod("hashCode")));
  }

  @Test
  void theOnlyPlaceThatKnowsALengthOfAPaperIsPaper() throws IOException {
    String look = Files.readString(Path.of("templates/looks/binder.ftl"));
    assertFalse(look.matches("(?s).*(215\\.9|279\\.4|612|792|8\\.5in|11in|210mm|297mm).*"));
  }
}
