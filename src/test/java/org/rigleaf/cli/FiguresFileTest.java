package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.source.ProblemsFound;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code figures.json} promises, read as any other program would read it. */
class FiguresFileTest {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();
  private static final Set<String> CHECKS =
      Set.of("published", "independent program", "second derivation", "house assumption");
  private static final Pattern PLACE = Pattern.compile("([a-z.]+\\.yaml):(\\d+):(\\d+)");

  private static Stream<String> rigs() {
    return TestRigs.all();
  }

  private static Map<String, JsonNode> byId(String rig, String list) {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    for (JsonNode node : JSON.readTree(Printed.figures(rig)).get(list)) {
      JsonNode twin = all.put(node.get("id").asString(), node);
      assertEquals(null, twin, "an id stands once");
    }
    return all;
  }

  private static String value(JsonNode node) {
    JsonNode value = node.get("value");
    return value.isNumber() ? value.decimalValue().toPlainString() : value.asString();
  }

  private static Set<String> texts(JsonNode list) {
    Set<String> texts = new TreeSet<>();
    list.forEach(t -> texts.add(t.asString()));
    return texts;
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void everyFigureOfTheBinderSaysTheSameInTheFile(String rig) {
    Map<String, JsonNode> figures = byId(rig, "figures");
    List<String> wrong = new ArrayList<>();
    for (Element mark : Printed.html(rig).select("[data-figure]")) {
      JsonNode figure = figures.get(mark.attr("data-figure"));
      String page =
          String.join(
              "|",
              mark.attr("data-value"),
              mark.attr("data-unit"),
              mark.attr("data-from"),
              new TreeSet<>(List.of(mark.attr("data-assumes").split(" "))).toString());
      String file = figure == null ? "absent" : said(figure);
      if (!page.equals(file)) {
        wrong.add(mark.attr("data-figure") + ": page " + page + ", file " + file);
      }
    }
    assertEquals(List.of(), wrong);
    assertFalse(figures.isEmpty());
  }

  private static String said(JsonNode figure) {
    Set<String> assumes = texts(figure.get("assumes"));
    return String.join(
        "|",
        value(figure),
        figure.get("unit").asString(),
        figure.get("from").asString(),
        assumes.isEmpty() ? "[]" : assumes.toString());
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void everyFigureHasTitleWorkingSourceAndCheck(String rig) {
    List<String> wrong = new ArrayList<>();
    byId(rig, "figures")
        .forEach(
            (id, figure) -> {
              for (String key : new String[] {"title", "unit", "printed", "working", "source"}) {
                if (figure.get(key).asString().isBlank()) {
                  wrong.add(id + " has no " + key);
                }
              }
              if (figure.get("working").asString().matches(".*[{}].*")) {
                wrong.add(id + ": " + figure.get("working").asString());
              }
              if (!CHECKS.contains(figure.get("check").asString())) {
                wrong.add(id + " is checked by " + figure.get("check"));
              }
            });
    assertEquals(List.of(), wrong);
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void everyInputCanBeFollowedToAKeyATypicalValueOrAnotherFigure(String rig) throws IOException {
    Map<String, JsonNode> figures = byId(rig, "figures");
    Map<String, JsonNode> typical = byId(rig, "typical");
    List<String> wrong = new ArrayList<>();
    for (JsonNode figure : figures.values()) {
      for (JsonNode input : figure.get("inputs")) {
        String lost = lost(rig, input, figures, typical);
        if (!lost.isEmpty()) {
          wrong.add(figure.get("id").asString() + "." + input.get("name").asString() + lost);
        }
      }
      if (names(figure) != figure.get("inputs").size()) {
        wrong.add(figure.get("id").asString() + " has two inputs of one name");
      }
      Set<String> assumes = assumes(figure, figures);
      if (!assumes.equals(texts(figure.get("assumes")))
          || assumes.isEmpty() != figure.get("from").asString().equals("given")) {
        wrong.add(figure.get("id").asString() + " leans on " + assumes);
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static int names(JsonNode figure) {
    Set<String> names = new TreeSet<>();
    figure.get("inputs").forEach(in -> names.add(in.get("name").asString()));
    return names.size();
  }

  private static String lost(
      String rig, JsonNode input, Map<String, JsonNode> figures, Map<String, JsonNode> typical)
      throws IOException {
    if (input.has("figure")) {
      JsonNode from = figures.get(input.get("figure").asString());
      return from != null && same(input, from) ? "" : " is not that figure";
    }
    if (input.has("typical")) {
      JsonNode from = typical.get(input.get("typical").asString());
      return from != null && same(input, from) ? "" : " is not that typical value";
    }
    return input.get("key").asString().isBlank() || !written(rig, input)
        ? " does not stand at " + input.get("at")
        : "";
  }

  private static boolean same(JsonNode input, JsonNode from) {
    return new java.math.BigDecimal(value(input)).compareTo(new java.math.BigDecimal(value(from)))
            == 0
        && input.get("unit").equals(from.get("unit"));
  }

  /** True if the file says at that line and column what the input is said to be written as. */
  private static boolean written(String rig, JsonNode input) throws IOException {
    Matcher place = PLACE.matcher(input.get("at").asString());
    if (!place.matches()) {
      return false;
    }
    Path file = Printed.path(rig).resolveSibling(place.group(1));
    String line = Files.readAllLines(file).get(Integer.parseInt(place.group(2)) - 1);
    return line.substring(Integer.parseInt(place.group(3)) - 1)
        .contains(input.get("written").asString());
  }

  /** The typical values of the whole chain, followed through the file. */
  private static Set<String> assumes(JsonNode figure, Map<String, JsonNode> figures) {
    Set<String> all = new TreeSet<>();
    for (JsonNode input : figure.get("inputs")) {
      if (input.has("typical")) {
        all.add(input.get("typical").asString());
      } else if (input.has("figure")) {
        all.addAll(assumes(figures.get(input.get("figure").asString()), figures));
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void everyTypicalValueIsLeantOnAndSaysWhereToLook(String rig) {
    Set<String> leant = new TreeSet<>();
    byId(rig, "figures").values().forEach(f -> leant.addAll(texts(f.get("assumes"))));
    Map<String, JsonNode> typical = byId(rig, "typical");
    assertEquals(leant, new TreeSet<>(typical.keySet()));
    typical
        .values()
        .forEach(
            t -> {
              assertFalse(t.get("source").asString().isBlank(), t.toString());
              assertFalse(t.get("look").asString().isBlank(), t.toString());
            });
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void theSameProfileGivesTheSameBytes(String rig) throws ProblemsFound, IOException {
    String again = Profile.read(Printed.path(rig)).maker().figuresFile();
    assertEquals(Printed.figures(rig), again);
    assertTrue(again.endsWith("}\n") && !again.contains("\r"));
  }

  @Test
  void noPrivateWordLeavesTheBinder() {
    int looked = 0;
    for (String rig : TestRigs.fleet().toList()) {
      for (Map.Entry<String, String> word : TestRigs.demo(rig).privateWords().entrySet()) {
        String secret = "(?s).*\\b" + Pattern.quote(word.getValue()) + "\\b.*";
        assertTrue(Printed.text(rig).matches(secret), rig + " prints " + word.getKey());
        assertFalse(Printed.figures(rig).matches(secret), rig + " " + word.getKey());
        assertFalse(Printed.figures(rig).contains(word.getKey()), rig + " " + word.getKey());
        looked++;
      }
    }
    assertTrue(looked >= 3, "only " + looked + " private words");
  }
}
