package org.rigleaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Input;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.TypicalValues;
import org.rigleaf.source.Nearest;
import picocli.CommandLine;

/** {@code rigleaf explain}: one figure, its working and source. */
@CommandLine.Command(
    name = "explain",
    description = "Explains one figure: its working, its source, and where its inputs come from.")
final class Explain implements Callable<Integer> {
  @CommandLine.Parameters(index = "0", paramLabel = "PROFILE", description = "The profile.")
  private Path file;

  @CommandLine.Parameters(
      index = "1",
      paramLabel = "FIGURE",
      description = "Id of the figure, such as bank.usable.")
  private String id;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    Profile profile = Profile.read(Main.file(file));
    Optional<Figure> figure = profile.figures().find(id);
    if (figure.isPresent()) {
      explain(profile, figure.get(), spec.commandLine().getOut());
      return 0;
    }
    spec.commandLine().getErr().println(absent(profile));
    return 2;
  }

  private void explain(Profile profile, Figure figure, PrintWriter out) {
    Wording.Entry words = Wording.english().figure(figure.entry().pattern());
    out.println(words.title() + ": " + profile.maker().guide().filler().shown(figure));
    out.println("  " + words.meaning());
    out.println("  working: " + profile.maker().numbers().working(figure).plain());
    out.println("  method:  " + figure.entry().source());
    out.println("  check:   " + figure.entry().check().text());
    figure
        .inputs()
        .forEach(
            in ->
                out.println(
                    "  "
                        + in.name()
                        + " = "
                        + Amounts.US.text(in.value(), in.unit())
                        + ", "
                        + origin(in)));
  }

  private static String origin(Input input) {
    if (input instanceof Input.OfFigure f) {
      return "figure " + f.figure().id();
    }
    Fact fact = ((Input.OfFact) input).fact();
    if (fact.origin() instanceof Fact.Given given) {
      return given.at() + " " + fact.path();
    }
    String typical = ((Fact.Typical) fact.origin()).id();
    return "typical value "
        + typical
        + " ("
        + TypicalValues.of(typical).source()
        + "); look: "
        + Wording.english().typical(typical).meaning();
  }

  private String absent(Profile profile) {
    Set<String> missing = profile.figures().missing(id);
    if (!missing.isEmpty()) {
      return id + ": absent, because the profile does not give " + String.join(", ", missing);
    }
    List<String> known = profile.figures().all().stream().map(Figure::id).toList();
    return id
        + ": this rig has no such figure: "
        + Nearest.to(id, known)
            .map(n -> "did you mean '" + n + "'?")
            .orElse("'rigleaf build' lists all of them in the binder");
  }
}
