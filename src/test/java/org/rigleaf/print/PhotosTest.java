package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.SamplePhotos;
import org.rigleaf.cli.Main;
import org.rigleaf.cli.Printed;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The keeper's photos from the profile to the page. */
class PhotosTest {
  private static final String RIG =
      """
      rig: {name: Reed, kind: travel trailer, photo: photos/reed.png}
      water:
        pump: {where: under the sofa, photo: photos/pump.jpg}
        filter: {where: beside the pump, photo: photos/pump.jpg}
      electric:
        disconnect: {photo: switch.jpg}
        batteries: {type: agm, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1}
      """;

  @TempDir private Path folder;

  private Path profile;

  @BeforeEach
  void writeAProfileWithThreePhotos() throws IOException {
    Files.createDirectories(folder.resolve("photos"));
    byte[] reed = SamplePhotos.file(SamplePhotos.fields(1600, 900), "png");
    Files.write(folder.resolve("photos/reed.png"), reed);
    Files.write(folder.resolve("photos/pump.jpg"), SamplePhotos.photo(1600, 1200, 6));
    Files.write(folder.resolve("switch.jpg"), SamplePhotos.photo(300, 300, 1));
    profile = Files.writeString(folder.resolve("reed.yaml"), RIG);
  }

  private static Document html(Map<String, byte[]> files) {
    return Jsoup.parse(new String(files.get("binder.html"), StandardCharsets.UTF_8));
  }

  private static byte[] jpeg(Element img) {
    return Base64.getDecoder().decode(img.attr("src").replace("data:image/jpeg;base64,", ""));
  }

  @Test
  void aPhotoPrintsOnceWithCodeNameAndPlaceOfAllThatItShows() {
    Document html = html(Printed.of(profile));
    assertEquals(3, html.select("img").size());
    assertEquals(3, html.select("[data-topic=photos] img").size());
    List<String> alts = html.select("img").stream().map(i -> i.attr("alt")).toList();
    assertEquals(
        List.of(
            "Photo: Reed",
            "Photo: Battery switch",
            "Photo: Water pump, under the sofa; Water filter, beside the pump"),
        alts);
    Element pump = html.select(".photo").get(2);
    String code = html.selectFirst(".drawing [data-gear=water.pump]").attr("data-code");
    assertEquals(code, pump.selectFirst("[data-gear=water.pump] .code").text());
    assertTrue(pump.text().contains("Water filter beside the pump"), pump.text());
    assertTrue(pump.hasClass("tall"), "the camera was held upright");
  }

  @Test
  void thePdfHoldsTheVeryBytesOfTheHtmlAndNothingThatTheCameraWrote() {
    Map<String, byte[]> files = Printed.of(profile);
    String pdf = new String(files.get("binder.pdf"), StandardCharsets.ISO_8859_1);
    String html = new String(files.get("binder.html"), StandardCharsets.UTF_8);
    for (Element img : html(files).select("img")) {
      String photo = new String(jpeg(img), StandardCharsets.ISO_8859_1);
      assertTrue(pdf.contains(photo), img.attr("alt"));
      for (String mark : List.of("Exif", SamplePhotos.CAMERA, SamplePhotos.GPS_DATE)) {
        assertTrue(!photo.contains(mark) && !pdf.contains(mark) && !html.contains(mark), mark);
      }
    }
  }

  @Test
  void twoRunsGiveTheSameBytes() {
    Map<String, byte[]> first = Printed.of(profile);
    Map<String, byte[]> second = Printed.of(profile);
    assertArrayEquals(first.get("binder.html"), second.get("binder.html"));
    assertArrayEquals(first.get("binder.pdf"), second.get("binder.pdf"));
  }

  @Test
  void aReaderWhoCannotSeeGetsAllOfIt() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    byte[] pdf = Printed.of(profile).get("binder.pdf");
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
      List<String> failed =
          validator.validate(parser).getTestAssertions().stream()
              .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
              .map(a -> a.getRuleId().getClause() + " " + a.getMessage())
              .distinct()
              .toList();
      assertEquals(List.of(), failed);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "build"})
  void whatIsWrongWithAPhotoIsNamedWithTheOtherProblemsAndNothingIsWritten(String command)
      throws IOException {
    Files.write(folder.resolve("huge.png"), SamplePhotos.claims(60_000, 60_000));
    Files.writeString(folder.resolve("words.jpg"), "no photo at all");
    Files.writeString(
        profile,
        """
        rig: {name: Reed, kind: travel trailer, photo: ../reed.jpg}
        water:
          fresh: {holds: 42 psi, photo: huge.png}
          pump: {photo: none.jpg}
        electric:
          disconnect: {photo: words.jpg}
        """);
    StringWriter err = new StringWriter();
    Path out = folder.resolve("out");
    String[] build = {command, profile.toString(), "--out", out.toString()};
    String[] args = command.equals("check") ? new String[] {build[0], build[1]} : build;
    assertEquals(1, Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args));
    String all = err.toString().replace(profile.toString(), "reed.yaml").strip();
    assertEquals(
        """
        reed.yaml:1:48: rig.photo: '../reed.jpg' is not inside the folder of the profile: put the photo beside the profile, or in a folder beside it
        reed.yaml:3:18: water.fresh.holds: '42 psi' is a pressure, not a volume: write a volume, such as 42 gal
        reed.yaml:3:33: water.fresh.photo: the photo has 60000 x 60000 pixels, more than 60 million: save it smaller: 2000 pixels wide is enough
        reed.yaml:4:17: water.pump.photo: there is no file 'none.jpg': look at its name and folder
        reed.yaml:6:23: electric.disconnect.photo: the file is neither a PNG nor a JPEG: open it in a photo program and save it as a JPEG""",
        all);
    assertTrue(!Files.exists(out));
  }

  @Test
  void aRigWithoutPhotosHasNoTopicOfThem() {
    assertTrue(Printed.html("sedge").select("[data-topic=photos]").isEmpty());
  }
}
