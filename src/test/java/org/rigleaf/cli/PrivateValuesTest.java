package org.rigleaf.cli;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.sheets.BinderMaker;

/**
 * What stands under {@code private:} reaches the owner's binder and no other file: sheets, their
 * metadata and attachments, data for other programs, and the editions that are kept.
 */
class PrivateValuesTest {
  private static final String KEY = "zebra-finch-key";
  private static final String VALUE = "QUAGGA-7731";

  private static final List<String> FEW =
      List.of("1.json", "cards.pdf", "labels.html", "figures.json", "upkeep.ics", "booklet.pdf");

  /** As files may write them: plain, in two bytes a letter, and that in hexadecimal digits. */
  private static final List<String> SIGNS =
      Stream.of(KEY, VALUE).flatMap(PrivateValuesTest::signs).toList();

  private static Stream<String> signs(String secret) {
    byte[] wide = secret.getBytes(StandardCharsets.UTF_16BE);
    return Stream.of(
        secret,
        new String(wide, StandardCharsets.ISO_8859_1),
        HexFormat.of().withUpperCase().formatHex(wide));
  }

  @TempDir private Path folder;

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void noSheetEditionOrDataFileHoldsThem(String rig) throws Exception {
    Path profile = copy(rig);
    String others = Sheets.names().stream().filter(n -> !n.equals("binder")).collect(joining(","));
    run("issue", profile.toString(), "--out", folder + "/out", "--sheets", others);
    BinderMaker maker = Profile.read(profile).maker();
    Files.writeString(folder.resolve("out/figures.json"), maker.figuresFile());
    Files.writeString(folder.resolve("out/upkeep.ics"), maker.calendarFile());
    List<Path> files = files();
    List<String> names = files.stream().map(p -> p.getFileName().toString()).toList();
    assertTrue(names.containsAll(FEW), "" + names);
    for (Path file : files) {
      assertFalse(holds(file), file.toString());
    }
  }

  @Test
  void theOwnersBinderHoldsThemAndItsAttachmentDoesNot() throws IOException {
    Path profile = copy("duckweed");
    run("build", profile.toString(), "--out", folder + "/out", "--sheets", "binder");
    assertTrue(holds(folder.resolve("out/duckweed/binder.html")));
    Path printed = folder.resolve("out/duckweed/binder.pdf");
    assertTrue(holds(printed));
    try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(printed))) {
      var files = pdf.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      assertFalse(tells(files.get("duckweed.yaml").getEmbeddedFile().toByteArray()));
    }
  }

  private Path copy(String rig) throws IOException {
    String text = Files.readString(Path.of("rig-profiles", rig + ".yaml"));
    Files.createDirectories(folder.resolve("photos"));
    try (Stream<Path> photos = Files.list(Path.of("rig-profiles/photos"))) {
      for (Path photo : photos.toList()) {
        Files.copy(photo, folder.resolve("photos").resolve(photo.getFileName().toString()));
      }
    }
    return Files.writeString(folder.resolve(rig + ".yaml"), told(text));
  }

  private static String told(String profile) {
    String without = profile.replaceAll("(?m)^private:\\R(  .*\\R)*", "");
    return without + "\nprivate:\n  " + KEY + ": \"" + VALUE + "\"\n";
  }

  private static void run(String... args) {
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
    assertEquals(0, code, err.toString());
  }

  /** All but the profile itself. */
  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(p -> !p.getParent().equals(folder))
          .sorted()
          .toList();
    }
  }

  private static boolean holds(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    return tells(bytes) || file.toString().endsWith(".pdf") && pdfTells(bytes);
  }

  private static boolean tells(byte[] bytes) {
    String raw = new String(bytes, StandardCharsets.ISO_8859_1);
    return SIGNS.stream().anyMatch(raw::contains);
  }

  /** Its text; every stream unpacked: metadata, attachments; its strings: outlines, titles. */
  private static boolean pdfTells(byte[] bytes) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      ByteArrayOutputStream plain = new ByteArrayOutputStream();
      String text = new PDFTextStripper().getText(pdf);
      boolean streams = streams(pdf.getDocument());
      pdf.save(plain, CompressParameters.NO_COMPRESSION);
      return streams || tells(text.getBytes(StandardCharsets.UTF_8)) || tells(plain.toByteArray());
    }
  }

  private static boolean streams(COSDocument document) throws IOException {
    for (COSObjectKey key : document.getXrefTable().keySet()) {
      if (document.getObjectFromPool(key).getObject() instanceof COSStream stream
          && tells(stream.createInputStream().readAllBytes())) {
        return true;
      }
    }
    return false;
  }
}
