package org.rigleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.rigleaf.drawings.Misplaced;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Findings;
import org.rigleaf.guidance.Unknowns;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Position;
import picocli.CommandLine;

/**
 * {@code rigleaf check}: every problem at once; then findings, spots where no wall is, and what is
 * unknown.
 */
@CommandLine.Command(
    name = "check",
    description =
        "Names every problem of a profile, what needs attention, and what is still unknown.")
final class CheckCommand implements Callable<Integer> {
  private static final int NAMED = 8; // unknown facts named as the next most useful

  @CommandLine.Parameters(
      arity = "1..*",
      paramLabel = "PROFILE",
      description = "Profiles to check, or folders of them.")
  private List<Path> files;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    return new EachProfile(spec.commandLine(), 1).run(files, this::report);
  }

  private List<String> report(Profile profile) {
    List<String> lines = new ArrayList<>();
    lines.add(profile.file() + ": no problems");
    List<Finding> findings =
        Findings.of(profile.rig(), profile.figures(), Wording.english(), profile.maker().guide());
    findings.forEach(f -> lines.add("  " + f.severity() + ": " + f.text().plain()));
    Misplaced.of(profile.rig())
        .forEach(m -> lines.add("  measure again: " + doubt(profile.rig(), m)));
    Unknowns unknowns = Unknowns.of(profile.maker().guide(), profile.figures());
    int safety = unknowns.safety().size();
    int others = unknowns.uses().size() - safety;
    lines.add("  " + safety + " safety facts and " + others + " others unknown" + next(unknowns));
    return lines;
  }

  private static String doubt(Rig rig, Misplaced spot) {
    String path = spot.gear().id() + ".at";
    Position at = ((Fact.Given) rig.facts().get(path).origin()).at();
    String there =
        switch (spot.on()) {
          case WHEEL -> "on a wheel";
          case AIR -> "under the raised front part, where there is no wall";
        };
    return "line " + at.line() + ": " + path + " is " + there;
  }

  private static String next(Unknowns unknowns) {
    List<String> first = unknowns.uses().keySet().stream().limit(NAMED).toList();
    return first.isEmpty() ? "" : "; next most useful: " + String.join(", ", first);
  }
}
