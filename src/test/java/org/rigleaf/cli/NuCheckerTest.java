package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page of HTML by the Nu checker of the W3C, an independent program: no error. */
class NuCheckerTest {
  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pages")
  void noError(String rig, String file) throws Exception {
    assertEquals(List.of(), errors(EverySheet.file(rig, file)));
  }

  @Test
  void anErrorIsFound() throws Exception {
    String page = "<!DOCTYPE html><html lang=\"en\"><title>a</title><p><b>open</p></html>";
    assertFalse(errors(page.getBytes(StandardCharsets.UTF_8)).isEmpty());
  }

  private static List<String> errors(byte[] html) throws Exception {
    EmbeddedValidator checker = new EmbeddedValidator();
    checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
    return checker
        .validate(new ByteArrayInputStream(html))
        .lines()
        .filter(l -> l.contains(": error:") || l.contains(": fatal:"))
        .distinct()
        .limit(20)
        .toList();
  }
}
