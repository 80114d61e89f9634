package org.rigleaf.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rules of a style for print, as its template writes them. */
final class Styles {
  private static final Pattern RULE = Pattern.compile("(?m)^([^{}]+) \\{ ([^{}]*) \\}");
  private static final Pattern SIZE = Pattern.compile("(?<!-)font-size: ([\\d.]+)pt");
  private static final Pattern HEIGHT = Pattern.compile("line-height: ([\\d.]+)pt");

  /** A rule that sets both: share is the line over the type. */
  record Leading(String of, double size, double share) {}

  private Styles() {}

  static List<Leading> leading(String look) throws IOException {
    return RULE.matcher(text(look))
        .results()
        .map(r -> leading(r.group(1), r.group(2)))
        .filter(l -> l.size() > 0)
        .toList();
  }

  private static Leading leading(String of, String rule) {
    Matcher size = SIZE.matcher(rule);
    Matcher height = HEIGHT.matcher(rule);
    if (!size.find() || !height.find()) {
      return new Leading(of, 0, 0);
    }
    double type = Double.parseDouble(size.group(1));
    return new Leading(of, type, Double.parseDouble(height.group(1)) / type);
  }

  /** A property of each rule whose selector is of a form with one group, by that group. */
  static Map<String, String> of(String look, String property, String selector) throws IOException {
    Map<String, String> found = new TreeMap<>();
    Pattern value = Pattern.compile("(?<!-)" + property + ": ([^;]+);");
    RULE.matcher(text(look))
        .results()
        .forEach(
            r -> {
              Matcher name = Pattern.compile(selector).matcher(r.group(1));
              Matcher set = value.matcher(r.group(2));
              if (name.matches() && set.find()) {
                found.put(name.group(1), set.group(1));
              }
            });
    return found;
  }

  private static String text(String look) throws IOException {
    return Files.readString(Path.of("templates/looks", look + ".ftl"));
  }
}
