package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarConsumer;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/**
 * Runs the same work over several profiles; problems of one stop none of the others.
 *
 * @param jobs profiles worked on at the same time
 */
record EachProfile(CommandLine line, int jobs) {
  private static final Pattern COMPANION = Pattern.compile("\\.(log|stay)\\.ya?ml$");

  /** Work on one profile; returns the lines to print. */
  interface Work {
    List<String> on(Profile profile) throws ProblemsFound, IOException;
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

  /**
   * Does the work on all of them, then says what came of each, in the order of their names. On a
   * terminal a bar shows how far it is.
   *
   * @return 0, 1 if any profile had problems, 3 if the machine refused any
   */
  int run(List<Path> named, Work work) throws IOException, InterruptedException {
    List<Path> files = profiles(named);
    ExecutorService pool = Executors.newFixedThreadPool(jobs);
    try {
      return all(pool, files, work).stream().mapToInt(this::said).max().orElseThrow();
    } finally {
      pool.shutdownNow();
    }
  }

  private static List<Future<List<String>>> all(ExecutorService pool, List<Path> files, Work work)
      throws InterruptedException {
    try (ProgressBar bar = bar(files.size())) {
      List<Callable<List<String>>> tasks = new ArrayList<>();
      files.forEach(f -> tasks.add(() -> done(f, work, bar)));
      return pool.invokeAll(tasks);
    }
  }

  private static List<String> done(Path file, Work work, ProgressBar bar)
      throws ProblemsFound, IOException {
    try {
      return work.on(Profile.read(file));
    } finally {
      bar.step();
    }
  }

  private int said(Future<List<String>> one) {
    try {
      one.get().forEach(line.getOut()::println);
      return 0;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof CommandLine.ParameterException wrongUsage) {
        throw wrongUsage;
      }
      return Main.failed((Exception) e.getCause(), line);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e); // all are done
    }
  }

  private static ProgressBar bar(int count) {
    boolean shown = count > 1 && System.console() != null;
    ProgressBarBuilder builder =
        new ProgressBarBuilder().setTaskName("rigs").setInitialMax(count).showSpeed();
    return shown ? builder.build() : builder.setConsumer(new Silent()).build();
  }

  /** Where nobody watches. */
  private record Silent() implements ProgressBarConsumer {
    @Override
    public int getMaxRenderedLength() {
      return 0;
    }

    @Override
    public void accept(String rendered) {}

    @Override
    public void close() {}
  }
}
