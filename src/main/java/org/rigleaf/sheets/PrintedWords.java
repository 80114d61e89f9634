package org.rigleaf.sheets;

import java.util.Map;
import org.rigleaf.drawings.NetWords;
import org.rigleaf.figures.Amounts;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;

/** The words of drawings, as the sheets print them. */
record PrintedWords(Wording wording, Guide guide) implements NetWords {
  @Override
  public String phrase(String id, Map<String, String> values) {
    return wording.phrase(id, values);
  }

  @Override
  public String name(String id) {
    return guide.places().name(id);
  }

  @Override
  public String amount(Fact fact) {
    return amounts().text(fact.value(), fact.unit());
  }

  @Override
  public Amounts amounts() {
    return wording.amounts();
  }
}
