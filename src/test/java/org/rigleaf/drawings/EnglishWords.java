package org.rigleaf.drawings;

import java.util.Map;
import org.rigleaf.figures.Amounts;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;

/** The printed phrases, with names of gear that a test chooses; gear without one has none. */
record EnglishWords(Map<String, String> names) implements NetWords {
  @Override
  public String phrase(String id, Map<String, String> values) {
    return Wording.english().phrase(id, values);
  }

  @Override
  public String name(String id) {
    return names.getOrDefault(id, "");
  }

  @Override
  public String amount(Fact fact) {
    return fact.written();
  }

  @Override
  public Amounts amounts() {
    return Amounts.US;
  }
}
