package org.rigleaf.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.rigleaf.rig.Edition.Change;

/** The change record of a binder: each edition, when it was made, and what was changed for it. */
public final class ChangeRecord {
  private ChangeRecord() {}

  /**
   * The editions up to that of a profile, first to last.
   *
   * @param issued all that were issued
   * @param now the edition of the profile, issued or not
   */
  public static List<Edition> of(List<Issued> issued, org.rigleaf.rig.Edition now) {
    int number = IssuedMaker.number(now);
    List<Edition> record = new ArrayList<>();
    issued.stream()
        .filter(i -> i.number() < number)
        .map(i -> row(i.number(), i.date(), i.changes(), i.note()))
        .forEach(record::add);
    record.add(
        row(
            number,
            now.date().map(LocalDate::toString).orElse(""),
            now.changes().stream().map(Change::what).toList(),
            now.note().orElse("")));
    return List.copyOf(record);
  }

  private static Edition row(int number, String date, List<String> changes, String note) {
    List<String> said =
        Stream.concat(changes.stream(), Stream.of(note)).filter(s -> !s.isBlank()).toList();
    return new Edition(number, NoticeMaker.date(date), String.join("; ", said));
  }
}
