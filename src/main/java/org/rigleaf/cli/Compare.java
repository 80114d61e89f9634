package org.rigleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rigleaf.sheets.Issued;
import picocli.CommandLine;

/** {@code rigleaf compare}: the notice of what changed since an issued edition. */
@CommandLine.Command(
    name = "compare",
    description = "Prints the notice of what the profile changes since an issued edition.")
final class Compare implements Callable<Integer> {
  @CommandLine.Parameters(paramLabel = "PROFILE", description = "The profile.")
  private Path file;

  @CommandLine.Option(
      names = "--since",
      paramLabel = "NUMBER",
      description = "The edition to compare with (default: the last one before).")
  private Integer since;

  @CommandLine.Mixin private Options options;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    Profile profile = Profile.read(Main.file(file));
    Optional<Issued> before =
        since == null ? profile.editions().last() : profile.editions().of(since);
    if (before.isEmpty()) {
      List<Integer> issued = profile.editions().all().stream().map(Issued::number).toList();
      spec.commandLine().getErr().println(file + ": no such edition was issued: use " + issued);
      return 2;
    }
    Issuing issuing = Issuing.since(profile, before, Output.TEMPLATES);
    Path folder = options.folder(profile);
    Output.notice(issuing, options).writeTo(folder);
    spec.commandLine().getOut().println(folder.resolve("notice.pdf"));
    return 0;
  }
}
