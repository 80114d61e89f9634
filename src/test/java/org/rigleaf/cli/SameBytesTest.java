package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The same profile gives the same bytes, of every file: in another program run, at another second,
 * from another folder, under another locale, time zone, encoding of files and line end.
 */
class SameBytesTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "sedge, ar-EG-u-nu-arab, Pacific/Kiritimati, windows-1256",
    "bogbean, th-TH-u-ca-buddhist-nu-thai, Asia/Kathmandu, windows-874"
  })
  void aRunAbroadGivesTheSameFiles(String rig, String locale, String zone, String encoding)
      throws Exception {
    Map<String, byte[]> home = new TreeMap<>(Printed.all(rig));
    Map<String, byte[]> abroad = abroad(rig, locale, zone, encoding);
    assertEquals(home.keySet(), abroad.keySet());
    home.forEach((name, bytes) -> assertArrayEquals(bytes, abroad.get(name), name));
  }

  private Map<String, byte[]> abroad(String rig, String locale, String zone, String encoding)
      throws Exception {
    Path away = Files.createDirectories(folder.resolve("a long way/" + rig));
    for (String file : List.of(rig + ".yaml", rig + ".log.yaml")) {
      Path from = Path.of("rig-profiles", file);
      if (Files.exists(from)) {
        Files.copy(from, away.resolve(file));
      }
    }
    String[] parts = locale.split("-u-")[0].split("-");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin/java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Duser.language=" + parts[0],
                "-Duser.country=" + parts[1],
                "-Duser.extensions=" + (locale.contains("-u-") ? locale.split("(?=u-)", 2)[1] : ""),
                "-Duser.timezone=" + zone,
                "-Dfile.encoding=" + encoding,
                "-Dline.separator=\r\n",
                "org.rigleaf.cli.Main",
                "build",
                away.resolve(rig + ".yaml").toString(),
                "--out",
                away.resolve("printed").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertEquals(0, process.waitFor(), () -> said(folder.resolve("said.txt")));
    return read(away.resolve("printed").resolve(rig));
  }

  private static String said(Path file) {
    try {
      return Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return e.toString();
    }
  }

  private static Map<String, byte[]> read(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
