package org.rigleaf.source;

import java.util.List;
import java.util.stream.Collectors;

/** A reading ended with problems; carries all of them. */
public final class ProblemsFound extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /** Wraps a list that is not empty. */
  public ProblemsFound(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** Every problem, in the order of the file. */
  public List<Problem> problems() {
    return problems;
  }
}
