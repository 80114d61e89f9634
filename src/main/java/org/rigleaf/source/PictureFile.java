package org.rigleaf.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.rigleaf.source.Picture.Refused;

/**
 * Opens the file of a picture, and none outside the folder: a profile may come from a stranger, and
 * a link may lead anywhere.
 */
final class PictureFile {
  private static final int LARGEST = 20_000_000; // bytes; a photo of a phone has 2 to 12 million

  private static final String INSIDE = "put the photo beside the profile, or in a folder beside it";
  private static final String NAMED = "write the name of a file beside the profile, 'pump.jpg'";

  private PictureFile() {}

  static byte[] bytes(Path folder, String name) throws Refused {
    Path file = inside(folder, path(folder, name), name);
    if (!Files.isRegularFile(file)) {
      throw new Refused("'" + name + "' is not a file", NAMED);
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw new Refused(
            "'" + name + "' is larger than 20 MB", "save it smaller: 2000 pixels wide is enough");
      }
      return bytes;
    } catch (IOException e) {
      throw new Refused("'" + name + "' cannot be opened", "look at the permissions of the file");
    }
  }

  /** The path as written; one that leaves the folder by its words alone is refused unopened. */
  private static Path path(Path folder, String name) throws Refused {
    try {
      Path path = Path.of(name);
      boolean out = path.isAbsolute() || name.startsWith("/") || name.contains("\\");
      for (Path part : path) {
        out |= part.toString().equals("..");
      }
      if (out || name.matches("(?s)\\w+:.*")) {
        throw new Refused("'" + name + "' is not inside the folder of the profile", INSIDE);
      }
      return folder.resolve(path);
    } catch (InvalidPathException e) {
      throw new Refused("this is not the name of a file", NAMED);
    }
  }

  /** The true place of the file, all links followed. */
  private static Path inside(Path folder, Path path, String name) throws Refused {
    try {
      Path file = path.toRealPath();
      if (!file.startsWith(folder.toRealPath())) {
        throw new Refused("'" + name + "' leads out of the folder of the profile", INSIDE);
      }
      return file;
    } catch (IOException e) {
      throw new Refused("there is no file '" + name + "'", "look at its name and folder");
    }
  }
}
