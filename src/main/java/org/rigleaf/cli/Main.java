package org.rigleaf.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.rigleaf.source.Problem;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/**
 * The command {@code rigleaf}. Exit codes: 0 done; 1 a profile has problems; 2 wrong usage or no
 * such file; 3 the machine failed us. A stack trace prints only with {@code --trace}.
 */
@CommandLine.Command(
    name = "rigleaf",
    description =
        "Prints what the next user of a recreational vehicle needs to know, for that one vehicle.",
    subcommands = {
      Begin.class,
      Build.class,
      CheckCommand.class,
      Explain.class,
      Issue.class,
      Compare.class
    },
    mixinStandardHelpOptions = true,
    version = "rigleaf 0.1.0")
public final class Main {
  @CommandLine.Option(
      names = "--trace",
      description = "On a failure, print where in the program it happened.")
  private boolean trace;

  private final BufferedReader in;

  private Main(Reader in) {
    this.in = new BufferedReader(in);
  }

  /** Starts the program. */
  public static void main(String[] args) {
    Reader in = new InputStreamReader(System.in, StandardCharsets.UTF_8);
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(in, out, err, args));
  }

  /** Runs one command that asks nothing and returns its exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    return run(Reader.nullReader(), out, err, args);
  }

  /** Runs one command, which may read answers from {@code in}, and returns its exit code. */
  public static int run(Reader in, PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = new CommandLine(new Main(in)).setOut(out).setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler((e, l, r) -> failed(e, l));
    if (args.length == 0) {
      line.usage(err);
      return 2;
    }
    return line.execute(args);
  }

  /** Says what went wrong and returns the exit code for it. */
  static int failed(Exception e, CommandLine line) {
    PrintWriter err = line.getErr();
    CommandLine root = line.getParent() == null ? line : line.getParent();
    if (((Main) root.getCommand()).trace) {
      e.printStackTrace(err);
    }
    if (e instanceof ProblemsFound found) {
      found.problems().stream().map(Problem::toString).forEach(err::println);
      return 1;
    } else if (e instanceof NoSuchFileException missing) {
      err.println(missing.getFile() + ": no such file: look at the name and the folder");
      return 2;
    } else if (e instanceof IOException io) {
      err.println(message(io));
      return 3;
    }
    err.println(
        "rigleaf failed: "
            + e
            + ": run it again with 'rigleaf --trace ...' and report what it prints");
    return 3;
  }

  /** What the machine refused, with the cure. */
  private static String message(IOException e) {
    String reason =
        e.getClass()
            .getSimpleName()
            .replaceAll("Exception$", "")
            .replaceAll("(?<=[a-z])(?=[A-Z])", " ");
    String cure =
        e instanceof FileAlreadyExistsException
            ? "move the file that stands where the folder should be"
            : "check the permissions and the space on the disk";
    return e.getMessage() + " (" + reason.toLowerCase(Locale.ROOT) + "): " + cure;
  }

  /** Where answers come from, line by line. */
  BufferedReader in() {
    return in;
  }

  /** Refuses what is not a file. */
  static Path file(Path path) throws NoSuchFileException {
    if (!Files.isRegularFile(path)) {
      throw new NoSuchFileException(path.toString());
    }
    return path;
  }
}
