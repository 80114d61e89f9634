package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/** {@code rigleaf build}: all sheets of one or several profiles. */
@CommandLine.Command(
    name = "build",
    description = "Prints the sheets of each profile into a folder of its own.")
final class Build implements Callable<Integer> {
  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "PROFILE",
      description = "Profiles to build, or folders of them.")
  private List<Path> files;

  @CommandLine.Option(
      names = "--jobs",
      paramLabel = "NUMBER",
      description = "Profiles to print at the same time (default: ${DEFAULT-VALUE}).")
  private int jobs = 1;

  @CommandLine.Mixin private Options options;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    if (jobs < 1) {
      throw new CommandLine.ParameterException(spec.commandLine(), "--jobs starts at 1");
    }
    return new EachProfile(spec.commandLine(), jobs).run(files, this::build);
  }

  private List<String> build(Profile profile) throws IOException, ProblemsFound {
    Path folder = options.folder(profile);
    Output output = Output.of(Issuing.toBuild(profile, Output.TEMPLATES), options);
    output.writeTo(folder);
    return output.files().keySet().stream()
        .filter(f -> f.endsWith(".pdf"))
        .map(f -> folder.resolve(f).toString())
        .toList();
  }
}
