package org.rigleaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rigleaf.rig.Fact;
import org.rigleaf.sheets.Issued;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import picocli.CommandLine;

/** {@code rigleaf issue}: freezes the edition beside the profile and prints its sheets. */
@CommandLine.Command(
    name = "issue",
    description = "Freezes the edition beside the profile, and prints all sheets and the notice.")
final class Issue implements Callable<Integer> {
  @CommandLine.Parameters(paramLabel = "PROFILE", description = "The profile.")
  private Path file;

  @CommandLine.Mixin private Options options;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    Profile profile = Profile.read(Main.file(file));
    Issuing issuing = Issuing.of(profile, Output.TEMPLATES);
    refuse(profile, issuing);
    PrintWriter say = spec.commandLine().getOut();
    Output output = Output.of(issuing.issued(), options); // what cannot be printed is not issued
    say.println(profile.editions().keep(issuing.now().orElseThrow()));
    Path folder = options.folder(profile);
    output.writeTo(folder);
    output.files().keySet().forEach(f -> say.println(folder.resolve(f)));
    return 0;
  }

  private static Position at(Profile profile) {
    return profile.rig().edition().number().origin() instanceof Fact.Given given
        ? given.at()
        : Position.start(profile.file().toString());
  }

  /** An edition is issued once, later than the one before it, and has a date. */
  private static void refuse(Profile profile, Issuing issuing) throws ProblemsFound {
    Problems problems = new Problems();
    Issued now = issuing.now().orElseThrow();
    Optional<Issued> last = profile.editions().last();
    Position at = at(profile);
    if (last.isPresent() && now.number() <= last.get().number()) {
      problems.add(
          at,
          "edition.number",
          "edition " + now.number() + " is issued already",
          "write " + (last.get().number() + 1));
    }
    if (now.date().isEmpty()) {
      problems.add(at, "edition.date", "an edition needs its date", "write it as 2026-05-02");
    } else if (last.isPresent() && now.date().compareTo(last.get().date()) < 0) {
      problems.add(
          at,
          "edition.date",
          now.date() + " is before edition " + last.get().number() + " of " + last.get().date(),
          "write the day of this edition");
    }
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
  }
}
