package org.rigleaf.sheets;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.rigleaf.guidance.Run;

/** Every run and every plain text of a tree of records, for tests of what is printed. */
final class Texts {
  private final List<Run> runs = new ArrayList<>();

  private Texts() {}

  static List<Run> of(Record record) {
    Texts texts = new Texts();
    texts.add(record);
    return texts.runs;
  }

  private void add(Object value) {
    if (value instanceof Run run) {
      runs.add(run);
    } else if (value instanceof Collection<?> all) {
      all.forEach(this::add);
    } else if (value instanceof String text) {
      runs.add(Run.text(text));
    } else if (value instanceof Record record) {
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        add(part(record, part));
      }
    }
  }

  private static Object part(Record record, RecordComponent part) {
    try {
      return part.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(part.getName(), e);
    }
  }
}
