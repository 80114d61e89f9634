package org.rigleaf.rig;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Unit;

/**
 * The edition that the keeper prepares.
 *
 * <pre>
 * edition:
 *   number: 1
 *   date: 2026-05-02
 *   note: First edition, for the spring loan
 * </pre>
 */
public record Edition(
    Fact number, Optional<LocalDate> date, Optional<String> note, List<Change> changes) {
  static Edition read(Section s) {
    return new Edition(
        s.between("number", Unit.COUNT, 1, 999),
        s.date("date").map(PartialDate::last),
        s.words("note"),
        s.items("changes", "change", "what", Change::read));
  }

  /**
   * What was changed on the rig since the last edition, and how many pounds it adds; less than none
   * where it takes weight off.
   */
  public record Change(
      String id,
      String what,
      Optional<String> why,
      Optional<String> fittedBy,
      Optional<PartialDate> fittedOn,
      Fact adds) {
    static Change read(Section s) {
      return new Change(
          s.path(),
          s.name().orElse("change"),
          s.words("why"),
          s.words("fitted-by"),
          s.date("fitted-on"),
          s.between("adds", Unit.POUND, -5000, 5000));
    }
  }
}
