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

  @CommandLine.Mixin private Options options;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return new EachProfile(spec.commandLine()).run(files, this::build);
  }

  private void build(Profile profile) throws IOException, ProblemsFound {
    Path folder = options.folder(profile);
    Output output = Output.of(Issuing.toBuild(profile, Output.TEMPLATES), options);
    output.writeTo(folder);
    output.files().keySet().stream()
        .filter(f -> f.endsWith(".pdf"))
        .forEach(f -> spec.commandLine().getOut().println(folder.resolve(f)));
  }
}
