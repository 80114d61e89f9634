package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Every PDF by veraPDF, an independent program: accessible, and fit to be kept. */
class ArchiveTest {
  @Test
  void everyKindOfDocumentIsLookedAt() {
    Set<String> sedge = EverySheet.files("sedge").keySet();
    assertTrue(
        sedge.containsAll(Sheets.names().stream().map(n -> n + ".pdf").toList()), "" + sedge);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void everyCheckOfPdfUaAndPdfA3Passes(String rig, String file) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    List<PDFAFlavour> both = List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A);
    ByteArrayInputStream pdf = new ByteArrayInputStream(EverySheet.file(rig, file));
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(pdf, both.get(0), both.get(1));
        PDFAValidator validator = Foundries.defaultInstance().createValidator(both)) {
      List<ValidationResult> results = validator.validateAll(parser);
      assertEquals(both, results.stream().map(ValidationResult::getPDFAFlavour).toList());
      for (ValidationResult result : results) {
        assertEquals(Map.of(), failures(result));
        assertTrue(result.isCompliant());
      }
    }
  }

  private static Map<String, Integer> failures(ValidationResult result) {
    Map<String, Integer> failures = new TreeMap<>();
    result.getTestAssertions().stream()
        .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
        .forEach(a -> failures.merge(a.getRuleId() + " " + a.getMessage(), 1, Integer::sum));
    return failures;
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.cli.EverySheet#pdfs")
  void theProfileInItsPlainFormIsAttached(String rig, String file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(EverySheet.file(rig, file))) {
      Map<String, PDComplexFileSpecification> files =
          pdf.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      assertEquals(Set.of(rig + ".yaml"), files.keySet());
      byte[] bytes = files.get(rig + ".yaml").getEmbeddedFile().toByteArray();
      String profile = new String(bytes, StandardCharsets.UTF_8);
      assertTrue(profile.contains("kind: "), profile);
      assertFalse(profile.contains("#") || profile.contains("private"), "comments, private values");
    }
  }
}
