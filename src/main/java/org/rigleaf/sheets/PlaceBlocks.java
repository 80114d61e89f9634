package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.PlanView;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** Blocks that say where things are: the map, the six things, label and fact pairs, contacts. */
final class PlaceBlocks {
  private final Rig rig;
  private final Wording wording;
  private final Guide guide;

  PlaceBlocks(Rig rig, Wording wording, Guide guide) {
    this.rig = rig;
    this.wording = wording;
    this.guide = guide;
  }

  Optional<Block> places(Show.Places show) {
    List<Legend> items =
        show.items().stream()
            .filter(i -> i.condition().holds(guide::has))
            .flatMap(i -> legends(i.gear()).stream())
            .toList();
    boolean printed = show.condition().holds(guide::has) && !items.isEmpty();
    return printed ? Optional.of(new PlacesBlock(show.title(), items)) : Optional.empty();
  }

  private List<Legend> legends(String type) {
    List<String> ids = guide.ids(type);
    return (ids.isEmpty() ? List.of(type) : ids).stream().map(this::legend).toList();
  }

  private Legend legend(String id) {
    String code = rig.codes().getOrDefault(id, "");
    return new Legend(code, id, guide.places().name(id), guide.places().where(id));
  }

  Optional<Block> pairs(Show.Pairs show) {
    List<String> items = show.each().isEmpty() ? List.of("") : guide.ids(show.each());
    List<List<Words>> rows = new ArrayList<>();
    for (String item : items) {
      show.items().stream()
          .filter(p -> p.condition().holds(guide::has))
          .forEach(
              p ->
                  rows.add(
                      List.of(
                          guide.filler().fill(p.label(), item),
                          guide.filler().fill(p.text(), item))));
    }
    List<String> heads = List.of(show.title(), wording.phrase("head-this-rig"));
    return rows.isEmpty() ? Optional.empty() : Optional.of(new TableBlock("", heads, rows, ""));
  }

  List<Contact> contacts() {
    return rig.contacts().stream()
        .map(
            c ->
                new Contact(
                    c.purpose().or(c::name).orElse(""), c.phone().orElse(""), c.hours().orElse("")))
        .toList();
  }

  List<Block> contactBlock(String title) {
    List<List<Words>> rows =
        rig.contacts().stream()
            .map(
                c ->
                    List.of(
                        Words.of(c.purpose().or(c::name).orElse("")),
                        Words.of(c.name().orElse("")),
                        Words.of(c.phone().orElse("")),
                        Words.of(c.hours().orElse(""))))
            .toList();
    List<String> heads =
        List.of(title, "", wording.phrase("head-phone"), wording.phrase("head-hours"));
    return rows.isEmpty()
        ? List.of(new FillBlock(title, List.of(title)))
        : List.of(new TableBlock("", heads, rows, ""));
  }

  /** All coded gear by code. */
  List<Legend> legend() {
    return rig.gear().stream()
        .sorted(
            Comparator.comparing((Gear g) -> rig.codes().get(g.id()).charAt(0))
                .thenComparing(g -> Integer.parseInt(rig.codes().get(g.id()).substring(1))))
        .map(g -> legend(g.id()))
        .toList();
  }

  List<Block> map() {
    Map<String, String> names = new HashMap<>();
    rig.gear().forEach(g -> names.put(g.id(), guide.places().name(g.id())));
    Drawing plan = PlanView.draw(rig, names);
    return List.of(new DrawingBlock("", plan.svg(), plan.alt(), legend()));
  }
}
