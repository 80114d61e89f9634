package org.rigleaf.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.rigleaf.sheets.Digests;

/** Digests of the running program and of its templates and wording. */
record Program(String code, String wording) {
  /** Looks into the jar or folder that the program runs from. */
  static Program running() {
    try {
      Path home =
          Path.of(Program.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(home)) {
        return of(home);
      }
      URI jar = URI.create("jar:" + home.toUri());
      try (FileSystem inside = FileSystems.newFileSystem(jar, Map.of())) {
        return of(inside.getPath("/"));
      }
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Program of(Path home) throws IOException {
    return new Program(
        digest(home.resolve("org").resolve("rigleaf")), digest(home.resolve("templates")));
  }

  private static String digest(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (Path file : files) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      bytes.write(name.getBytes(StandardCharsets.UTF_8));
      bytes.write(Files.readAllBytes(file));
    }
    return Digests.digest(bytes.toByteArray());
  }
}
