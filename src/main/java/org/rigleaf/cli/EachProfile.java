package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/** Runs the same work over several profiles; problems of one stop none of the others. */
record EachProfile(CommandLine line) {
  /** Work on one profile. */
  interface Work {
    void on(Profile profile) throws ProblemsFound, IOException;
  }

  /** Returns 0, 1 if any profile had problems, 3 if the machine refused any. */
  int run(List<Path> files, Work work) throws IOException {
    for (Path file : files) {
      Main.file(file);
    }
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
