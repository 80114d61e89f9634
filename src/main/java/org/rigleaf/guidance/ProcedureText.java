package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** A procedure as the wording has it, for all rigs. */
record ProcedureText(
    String id,
    String title,
    Condition condition,
    String mode,
    int minutes,
    List<ConditionalText> need,
    List<ConditionalText> stopIf,
    List<String> cautions,
    List<GroupText> groups,
    TextTemplate done) {

  /** A named group of items. */
  record GroupText(String title, Condition condition, List<Item> items) {}

  /** Reads one procedure. */
  static ProcedureText read(String id, Fields entry, WordingCheck check) {
    List<GroupText> groups = new ArrayList<>();
    for (Node node : entry.list("groups")) {
      entry.group(node, "groups").ifPresent(g -> groups.add(group(g, check)));
    }
    ProcedureText procedure =
        new ProcedureText(
            id,
            entry.text("title").map(Node.Text::value).orElse(""),
            Condition.read(entry, check.traits, check.problems),
            entry.text("mode").map(Node.Text::value).orElse("read-do"),
            entry.text("minutes").map(t -> Integer.parseInt(t.value())).orElse(0),
            ConditionalText.list(entry, "need", check),
            ConditionalText.list(entry, "stop-if", check),
            cautions(entry, check),
            List.copyOf(groups),
            TextTemplate.read(entry, "done", check));
    entry.finish();
    return procedure;
  }

  private static GroupText group(Fields entry, WordingCheck check) {
    GroupText group =
        new GroupText(
            entry.text("title").map(Node.Text::value).orElse(""),
            Condition.read(entry, check.traits, check.problems),
            items(entry, "steps", check));
    entry.finish();
    return group;
  }

  static List<Item> items(Fields entry, String key, WordingCheck check) {
    List<Item> items = new ArrayList<>();
    for (Node node : entry.list(key)) {
      entry.group(node, key).ifPresent(item -> items.add(item(item, check)));
    }
    return List.copyOf(items);
  }

  private static Item item(Fields entry, WordingCheck check) {
    Item item =
        entry.has("by")
            ? by(entry, check)
            : entry.has("each") ? each(entry, check) : step(entry, check);
    entry.finish();
    return item;
  }

  private static Item each(Fields entry, WordingCheck check) {
    Node.Text list = entry.text("each").orElseThrow();
    check.gear(list.at(), entry.pathOf("each"), list.value());
    return new Item.EachText(
        list.value(),
        Condition.read(entry, check.traits, check.problems),
        items(entry, "steps", check));
  }

  private static Item by(Fields entry, WordingCheck check) {
    Node.Text path = entry.text("by").orElseThrow();
    Map<String, List<Item>> cases = new LinkedHashMap<>();
    Optional<Fields> blocks = entry.group("cases");
    blocks.ifPresent(b -> b.keys().forEach(value -> cases.put(value, items(b, value, check))));
    boolean otherwise = entry.has("else");
    if (!path.value().startsWith(".")) {
      checkCases(path, cases.keySet(), otherwise, entry, check);
    }
    if (!otherwise && !entry.has("unknown")) {
      check.problem(
          path.at(),
          entry.pathOf("by"),
          "no block for an unstated value",
          "add 'unknown:' or 'else:'");
    }
    List<Item> other = items(entry, "else", check);
    List<Item> unknown = entry.has("unknown") ? items(entry, "unknown", check) : other;
    return new Item.ByText(path.value(), cases, other, unknown);
  }

  private static void checkCases(
      Node.Text path, Set<String> cases, boolean otherwise, Fields entry, WordingCheck check) {
    Set<String> values =
        check.traits.stream()
            .filter(t -> t.startsWith(path.value() + "."))
            .map(t -> t.substring(path.value().length() + 1))
            .filter(t -> !t.contains("."))
            .collect(Collectors.toSet());
    for (String value : values) {
      if (!cases.contains(value) && !otherwise) {
        check.problem(
            path.at(), entry.pathOf("by"), "no block for '" + value + "'", "add it or 'else:'");
      }
    }
    cases.stream()
        .filter(c -> !values.contains(c))
        .forEach(
            c ->
                check.problem(
                    path.at(), entry.pathOf("by"), "no value '" + c + "'", "one of: " + values));
  }

  /** A check of a fault is a step too: {@code look} is its action, {@code then} what one sees. */
  private static Item step(Fields entry, WordingCheck check) {
    String action = entry.has("look") ? "look" : "action";
    String see = entry.has("look") ? "then" : "see";
    Optional<Node.Text> id = entry.text("id");
    if (id.isEmpty() || !entry.has(action)) {
      check.problem(entry.at(), entry.path(), "a step needs an id and an action", "write both");
    }
    return new Item.StepText(
        id.map(Node.Text::value).orElse(""),
        Condition.read(entry, check.traits, check.problems),
        entry.texts("does").stream().map(Node.Text::value).toList(),
        cautions(entry, check),
        at(entry, check),
        kit(entry, check),
        TextTemplate.read(entry, action, check),
        TextTemplate.read(entry, see, check),
        TextTemplate.read(entry, "if-not", check),
        OnCard.read(entry, check));
  }

  /** The gear whose code and place print. */
  static Optional<String> at(Fields entry, WordingCheck check) {
    Optional<Node.Text> at = entry.text("at");
    at.ifPresent(t -> check.gear(t.at(), entry.pathOf("at"), t.value()));
    return at.map(Node.Text::value);
  }

  private static Optional<String> kit(Fields entry, WordingCheck check) {
    Optional<Node.Text> kit = entry.text("kit");
    kit.filter(k -> !Traits.safetyKitPaths().contains(k.value()))
        .ifPresent(
            k ->
                check.problem(
                    k.at(),
                    entry.pathOf("kit"),
                    "not safety kit: '" + k.value() + "'",
                    "one of: " + Traits.safetyKitPaths()));
    return kit.map(Node.Text::value);
  }

  static List<String> cautions(Fields entry, WordingCheck check) {
    List<Node.Text> ids = entry.texts("cautions");
    ids.forEach(t -> check.caution(t.at(), entry.pathOf("cautions"), t.value()));
    return ids.stream().map(Node.Text::value).toList();
  }
}
