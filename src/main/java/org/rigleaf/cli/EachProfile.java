package org.rigleaf.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.rigleaf.source.Problem;
import org.rigleaf.source.ProblemsFound;

/** Runs the same work over several profiles; problems of one stop none of the others. */
record EachProfile(PrintWriter err) {
  /** Work on one profile. */
  interface Work {
    void on(Profile profile) throws ProblemsFound, IOException;
  }

  /** Returns 0, or 1 if any profile had problems. */
  int run(List<Path> files, Work work) throws IOException {
    for (Path file : files) {
      Main.file(file);
    }
    int code = 0;
    for (Path file : files) {
      try {
        work.on(Profile.read(file));
      } catch (ProblemsFound found) {
        found.problems().stream().map(Problem::toString).forEach(err::println);
        code = 1;
      }
    }
    return code;
  }
}
