package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same profile gives the same bytes, of every file. */
@Isolated("sets the locale and the time zone of the whole machine")
class SameBytesTest {
  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail"})
  void twoRunsGiveTheSameFilesWhateverTheLocaleAndTimeZone(String rig) {
    Map<String, byte[]> first = Printed.all(rig);
    Map<String, byte[]> second = abroad(rig);
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
  }

  private static Map<String, byte[]> abroad(String rig) {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      return Printed.print(rig);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
