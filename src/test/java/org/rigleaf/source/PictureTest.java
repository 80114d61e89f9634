package org.rigleaf.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.SamplePhotos;

/** A keeper's photo becomes a plain upright JPEG, or is refused with a reason and a cure. */
class PictureTest {
  @TempDir private Path temp;

  private Path folder;

  @BeforeEach
  void makeTheFolderOfAProfile() throws IOException {
    folder = Files.createDirectories(temp.resolve("fleet"));
  }

  private Picture read(byte[] file) throws IOException, Picture.Refused {
    Files.write(folder.resolve("photo.jpg"), file);
    return Picture.read(folder, "photo.jpg");
  }

  private String refused(byte[] file) {
    return assertThrows(Picture.Refused.class, () -> read(file)).getMessage();
  }

  private String refused(String name) {
    return assertThrows(Picture.Refused.class, () -> Picture.read(folder, name)).getMessage();
  }

  private static byte[] jpeg(Picture picture) {
    return Base64.getDecoder().decode(picture.base64());
  }

  private static BufferedImage image(Picture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(jpeg(picture)));
  }

  /** The nearest of the four colors at a share of width and height. */
  private static char color(BufferedImage image, double across, double down) {
    Color c =
        new Color(
            image.getRGB((int) (across * image.getWidth()), (int) (down * image.getHeight())));
    boolean red = c.getRed() > 128;
    boolean green = c.getGreen() > 128;
    return red && green ? 'y' : red ? 'r' : green ? 'g' : 'b';
  }

  /**
   * Exif 2.3, 4.6.4 A, Orientation: which side of the scene the first row and the first column are.
   * As stored: red, green above blue, yellow.
   */
  @ParameterizedTest
  @CsvSource({
    "1, rgby", "2, gryb", "3, ybgr", "4, byrg", "5, rbgy", "6, bryg", "7, ygbr", "8, gyrb"
  })
  void aPhotoIsTurnedAsTheCameraWasHeld(int orientation, String fields) throws Exception {
    Picture picture = read(SamplePhotos.photo(400, 200, orientation));
    BufferedImage image = image(picture);
    StringBuilder seen = new StringBuilder();
    for (double down : new double[] {0.25, 0.75}) {
      seen.append(color(image, 0.25, down)).append(color(image, 0.75, down));
    }
    assertEquals(fields, seen.toString());
    boolean turned = orientation >= 5;
    assertEquals(turned ? 200 : 400, picture.width());
    assertEquals(turned ? 400 : 200, picture.height());
  }

  /** 85 mm at 300 dots an inch: 85 / 25.4 * 300 = 1003.9. */
  @ParameterizedTest
  @CsvSource({
    "3000, 2000, 1004, 669",
    "1500, 4500, 335, 1004",
    "1004, 1004, 1004, 1004",
    "120, 90, 120, 90",
    "4000, 1, 1004, 1"
  })
  void aPhotoIsNoLargerThanPrintNeedsAndNeverBlownUp(int w, int h, int width, int height)
      throws Exception {
    Picture picture = read(SamplePhotos.file(SamplePhotos.fields(w, h), "png"));
    assertEquals(List.of(width, height), List.of(picture.width(), picture.height()));
    assertEquals(width, image(picture).getWidth());
  }

  @Test
  void nothingThatTheCameraWroteIsLeft() throws Exception {
    byte[] file = SamplePhotos.photo(400, 200, 6);
    List<String> marks = List.of("Exif", SamplePhotos.CAMERA, SamplePhotos.GPS_DATE);
    String before = new String(file, StandardCharsets.ISO_8859_1);
    String after = new String(jpeg(read(file)), StandardCharsets.ISO_8859_1);
    for (String mark : marks) {
      assertTrue(before.contains(mark), "the test writes " + mark);
      assertTrue(!after.contains(mark), "still there: " + mark);
    }
  }

  @Test
  void theSameFileGivesTheSameBytes() throws Exception {
    byte[] file = SamplePhotos.photo(2400, 1800, 6);
    assertEquals(read(file), read(file));
  }

  @Test
  void whatIsSeenThroughInAPngIsWhite() throws Exception {
    BufferedImage clear = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);
    assertEquals(0xffffff, image(read(SamplePhotos.file(clear, "png"))).getRGB(9, 9) & 0xffffff);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../outside.jpg",
        "a/../../outside.jpg",
        "/etc/hostname",
        "C:\\photo.jpg",
        "..\\photo.jpg",
        "file:///etc/hostname",
        "https://example.org/photo.jpg",
        "link.jpg",
        "way/outside.jpg"
      })
  void nothingOutsideTheFolderIsRead(String name) throws IOException {
    Files.write(temp.resolve("outside.jpg"), SamplePhotos.photo(40, 30, 1));
    Files.createSymbolicLink(folder.resolve("link.jpg"), temp.resolve("outside.jpg"));
    Files.createSymbolicLink(folder.resolve("way"), temp);
    String says = refused(name);
    assertTrue(says.contains("the folder of the profile"), says);
  }

  @Test
  void aFolderInsideAndALinkThatStaysInsideAreRight() throws Exception {
    Path inner = Files.createDirectories(folder.resolve("photos"));
    Files.write(inner.resolve("pump.jpg"), SamplePhotos.photo(40, 30, 1));
    Files.createSymbolicLink(folder.resolve("link.jpg"), inner.resolve("pump.jpg"));
    assertEquals(Picture.read(folder, "photos/pump.jpg"), Picture.read(folder, "link.jpg"));
  }

  @Test
  void whatIsNotThereOrNoFileIsSaid() throws IOException {
    Files.createDirectories(folder.resolve("photos"));
    assertEquals("there is no file 'pump.jpg'", refused("pump.jpg"));
    assertEquals("'photos' is not a file", refused("photos"));
    assertEquals("this is not the name of a file", refused("a\0b.jpg"));
  }

  @Test
  void aPhotoThatClaimsToBeHugeIsRefusedBeforeItIsDecoded() {
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    refused(SamplePhotos.claims(60_000, 60_000)); // loads the classes
    long before = threads.getCurrentThreadAllocatedBytes();
    String says = refused(SamplePhotos.claims(60_000, 60_000));
    long used = threads.getCurrentThreadAllocatedBytes() - before;
    assertEquals("the photo has 60000 x 60000 pixels, more than 60 million", says);
    assertTrue(used < 5_000_000, used + " bytes for a picture of 10.8 billion");
  }

  @Test
  void aFileOfMoreThanTwentyMegabytesIsRefused() {
    byte[] large = Arrays.copyOf(SamplePhotos.photo(40, 30, 1), 20_000_001);
    assertEquals("'photo.jpg' is larger than 20 MB", refused(large));
  }

  @Test
  void aBrokenPhotoAndAnotherKindOfFileAreRefused() {
    byte[] jpeg = SamplePhotos.photo(400, 300, 1);
    byte[] png = SamplePhotos.file(SamplePhotos.fields(400, 300), "png");
    assertEquals(
        "the photo is broken: its end is missing",
        refused(Arrays.copyOf(jpeg, jpeg.length * 3 / 4)));
    assertEquals("the photo is broken", refused(Arrays.copyOf(png, png.length / 2)));
    assertEquals("the photo is broken", refused(Arrays.copyOf(jpeg, 30)));
    assertEquals("the photo is broken", refused(SamplePhotos.claims(400, 300)));
    String neither = "the file is neither a PNG nor a JPEG";
    assertEquals(neither, refused(SamplePhotos.file(SamplePhotos.fields(40, 30), "gif")));
    assertEquals(neither, refused("<svg/>".getBytes(StandardCharsets.UTF_8)));
    assertEquals(neither, refused(new byte[0]));
  }

  /** Whatever the bytes are, the answer is a picture or a reason, never a failure. */
  @Test
  void aDamagedFileNeverStopsTheProgram() throws IOException {
    java.util.Random random = new java.util.Random(7);
    int pictures = 0;
    for (int i = 0; i < 400; i++) {
      byte[] file =
          i % 2 == 0
              ? SamplePhotos.photo(60, 40, 1 + i % 8)
              : SamplePhotos.file(SamplePhotos.fields(60, 40), "png");
      for (int j = 0; j < 3; j++) {
        file[random.nextInt(Math.min(file.length, 400))] = (byte) random.nextInt(256);
      }
      try {
        read(file);
        pictures++;
      } catch (Picture.Refused e) {
        assertTrue(!e.cure().isEmpty());
      }
    }
    assertTrue(pictures > 20 && pictures < 400, "some are whole: " + pictures);
  }
}
