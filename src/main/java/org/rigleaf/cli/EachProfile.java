package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/** Runs the same work over several profiles; problems of one stop none of the others. */
record EachProfile(CommandLine line) {
  private static final Pattern COMPANION = Pattern.compile("\\.(log|stay)\\.ya?ml$");

  /** Work on one profile. */
  interface Work {
    void on(Profile profile) throws ProblemsFound, IOException;
  }

  /**
   * Profiles by name, those of a folder; the log or stay beside a profile is no profile of its own.
   */
  private static List<Path> profiles(List<Path> named) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path path : named) {
      files.addAll(Files.isDirectory(path) ? inside(path) : List.of(Main.file(path)));
    }
    files.removeIf(f -> COMPANION.matcher(f.getFileName().toString()).find());
    if (files.isEmpty()) {
      throw new NoSuchFileException(named.get(0) + " (no profile)");
    }
    return files;
  }

  private static List<Path> inside(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** Returns 0, 1 if any profile had problems, 3 if the machine refused any. */
  int run(List<Path> named, Work work) throws IOException {
    List<Path> files = profiles(named);
    int code = 0;
    for (Path file : files) {
      try {
        work.on(Profile.read(file));
      } catch (ProblemsFound | IOException e) {
        code = Math.max(code, Main.failed(e, line));
      }
    }
    return code;
  }
}
