package org.rigleaf.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.rigleaf.guidance.Question;
import org.rigleaf.guidance.Wording;
import org.rigleaf.source.Problem;
import picocli.CommandLine;

/** {@code rigleaf begin}: asks in plain words, and writes a first profile. */
@CommandLine.Command(
    name = "begin",
    description =
        "Asks about a rig in plain words and writes a first profile. A blank line leaves a question open.")
final class Begin implements Callable<Integer> {
  @CommandLine.Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      defaultValue = "my-rig.yaml",
      description = "The profile to write, ${DEFAULT-VALUE} if none is named; it must not exist.")
  private Path file;

  @CommandLine.ParentCommand private Main main;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  private Wording words;

  @Override
  public Integer call() throws IOException {
    words = Wording.english();
    PrintWriter err = spec.commandLine().getErr();
    if (Files.exists(file)) {
      err.println(phrase("begin-exists"));
      return 2;
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println(phrase("begin-intro"));
    FirstProfile profile = new FirstProfile(file);
    ask(profile, out);
    if (profile.answers() == 0) {
      err.println(phrase("begin-nothing"));
      return 2;
    }
    write(profile.text(), out);
    out.println(phrase("begin-done"));
    return 0;
  }

  private String phrase(String key) {
    return words.phrase(key, Map.of("file", file.toString()));
  }

  /** Until the questions or the answers end. */
  private void ask(FirstProfile profile, PrintWriter out) throws IOException {
    List<Question> all = List.copyOf(words.questions());
    boolean more = true;
    for (int i = 0; i < all.size() && more; i++) {
      if (profile.wants(all.get(i))) {
        out.println();
        out.println((i + 1) + "/" + all.size() + "  " + all.get(i).ask());
        out.println(help(all.get(i)));
        more = answered(all.get(i), profile, out);
      }
    }
  }

  private String help(Question question) {
    String like = words.phrase("begin-like", Map.of("like", question.like()));
    String choices = String.join(", ", question.choices());
    return (choices.isEmpty() ? like : words.phrase("begin-choices", Map.of("choices", choices)))
        + (question.none().isPresent() ? words.phrase("begin-none") : "");
  }

  /** Asks until the answer will do; false at the end of the answers. */
  private boolean answered(Question question, FirstProfile profile, PrintWriter out)
      throws IOException {
    BufferedReader in = main.in();
    while (true) {
      out.print("> ");
      out.flush();
      String line = in.readLine();
      if (line == null) {
        out.println();
        return false;
      }
      Optional<String> wrong = refused(question, line.strip(), profile);
      if (wrong.isEmpty()) {
        return true;
      }
      out.println(wrong.get());
    }
  }

  /** Why the answer will not do. */
  private Optional<String> refused(Question question, String answer, FirstProfile profile) {
    if (answer.isEmpty()) {
      return question.needed() ? Optional.of(words.phrase("begin-needed")) : Optional.empty();
    } else if (Question.isNone(answer) && question.none().isEmpty()) {
      return Optional.of(words.phrase("begin-not-none"));
    }
    List<Problem> problems = profile.add(question, answer);
    return problems.isEmpty()
        ? Optional.empty()
        : Optional.of(problems.stream().map(this::again).collect(Collectors.joining("\n")));
  }

  private String again(Problem problem) {
    return words.phrase("begin-again", Map.of("wrong", problem.wrong(), "cure", problem.cure()));
  }

  /** Whole or not at all; what the machine refuses to keep is shown, so that no answer is lost. */
  private void write(String profile, PrintWriter out) throws IOException {
    Path whole = file.toAbsolutePath();
    byte[] bytes = profile.getBytes(StandardCharsets.UTF_8);
    try {
      new Output(Map.of(whole.getFileName().toString(), bytes)).writeTo(whole.getParent());
    } catch (IOException e) {
      out.println(profile);
      throw e;
    }
  }
}
