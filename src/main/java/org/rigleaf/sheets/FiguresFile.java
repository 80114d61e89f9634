package org.rigleaf.sheets;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Input;
import org.rigleaf.figures.Value;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValue;
import org.rigleaf.rig.TypicalValues;
import org.rigleaf.source.Position;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The figures of a rig as JSON for other programs: what 'Where the numbers come from' prints. */
final class FiguresFile {
  private final Wording wording;
  private final Filler filler;
  private final NumberBlocks numbers;

  FiguresFile(Wording wording, Filler filler, NumberBlocks numbers) {
    this.wording = wording;
    this.filler = filler;
    this.numbers = numbers;
  }

  /** All figures, then the typical values they lean on; ends with a line break. */
  String json(Rig rig, Figures figures) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("rig", rig.identity().name());
    root.put("edition", rig.edition().number().known() ? (int) rig.edition().number().value() : 1);
    rig.edition().date().ifPresent(d -> root.put("date", d.toString()));
    Set<String> typical = new LinkedHashSet<>();
    ArrayNode all = root.putArray("figures");
    for (Figure figure : figures.all()) {
      all.add(figure(figure));
      typical.addAll(figure.assumes());
    }
    ArrayNode assumed = root.putArray("typical");
    typical.forEach(id -> assumed.add(typical(id)));
    return Json.text(root);
  }

  private ObjectNode figure(Figure figure) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("id", figure.id());
    node.put("title", wording.figure(figure.entry().pattern()).title());
    if (figure.value() instanceof Value.Number) {
      node.put("value", new BigDecimal(figure.value().data()));
    } else {
      node.put("value", figure.value().data());
    }
    node.put("unit", figure.unit().symbol());
    node.put("printed", filler.shown(figure));
    node.put("from", figure.assumes().isEmpty() ? "given" : "typical");
    node.put("working", numbers.working(figure).plain());
    node.put("source", figure.entry().source());
    node.put("check", figure.entry().check().text());
    figure.assumes().forEach(node.putArray("assumes")::add);
    ArrayNode inputs = node.putArray("inputs");
    figure.inputs().forEach(in -> inputs.add(input(in)));
    return node;
  }

  private static ObjectNode input(Input input) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("name", input.name());
    node.put("value", new BigDecimal(new Value.Number(input.value()).data()));
    node.put("unit", input.unit().symbol());
    if (input instanceof Input.OfFigure f) {
      node.put("figure", f.figure().id());
    } else {
      origin(node, ((Input.OfFact) input).fact());
    }
    return node;
  }

  private static void origin(ObjectNode node, Fact fact) {
    if (fact.origin() instanceof Fact.Given given) {
      node.put("key", fact.path());
      node.put("written", fact.written());
      node.put("at", inFile(given.at()));
    } else if (fact.origin() instanceof Fact.Typical typical) {
      node.put("typical", typical.id());
    }
  }

  /** Without the folder, which differs from machine to machine. */
  private static String inFile(Position at) {
    return Path.of(at.file()).getFileName() + ":" + at.line() + ":" + at.column();
  }

  private ObjectNode typical(String id) {
    TypicalValue value = TypicalValues.of(id);
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("id", id);
    node.put("title", wording.typical(id).title());
    node.put("value", BigDecimal.valueOf(value.value()));
    node.put("unit", value.unit().symbol());
    node.put("source", value.source());
    node.put("look", wording.typical(id).meaning());
    return node;
  }
}
