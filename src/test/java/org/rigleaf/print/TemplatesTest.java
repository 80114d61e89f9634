package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.sheets.Paper;

/** Templates see record accessors and nothing else, and never switch escaping off. */
class TemplatesTest {
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "\\?\\s*(interpret|eval|eval_json|eval_xml|no_esc|noEsc|evalJson|new|api)\\b"
              + "|<#(noautoesc|noAutoEsc|outputformat|outputFormat)\\b");

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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${p.class}",
        "${p.getClass()}",
        "${p.hashCode()}",
        "${p.class.protectionDomain}",
        "${p?api.widthMm()}",
        "${'freemarker.template.utility.Execute'?new()('id')}"
      })
  void aTemplateThatReachesBeyondTheRecordFails(String text) {
    assertThrows(TemplateException.class, () -> filled(text));
  }

  @Test
  void aTemplateReadsTheComponentsOfARecordAndEscapesThem() throws Exception {
    assertEquals("215.9", filled("${p.widthMm}"));
    assertEquals("&lt;b&gt;$", filled("${'<b>$'}"));
  }

  /** What the templates' own configuration makes of a text. */
  private static String filled(String text) throws Exception {
    Configuration configuration = Templates.configuration();
    StringWriter out = new StringWriter();
    new Template("test.ftlh", text, configuration).process(Map.of("p", Paper.LETTER), out);
    return out.toString();
  }

  @Test
  void theOnlyPlaceThatKnowsALengthOfAPaperIsPaper() throws IOException {
    String look = Files.readString(Path.of("templates/looks/binder.ftl"));
    assertFalse(look.matches("(?s).*(215\\.9|279\\.4|612|792|8\\.5in|11in|210mm|297mm).*"));
  }
}
