package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.drawings.BankNet;
import org.rigleaf.drawings.BatteryNet;
import org.rigleaf.drawings.MainsNet;
import org.rigleaf.drawings.NetWords;
import org.rigleaf.drawings.Schematic;
import org.rigleaf.drawings.SchematicParts;
import org.rigleaf.drawings.SchematicView;
import org.rigleaf.drawings.SchematicWords;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** What feeds what, as schematics with the words of the sheets. */
final class NetBlocks {
  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final NetWords words;

  NetBlocks(Rig rig, Figures figures, Guide guide, Wording wording) {
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.words = new PrintedWords(wording, guide);
  }

  NetWords words() {
    return words;
  }

  List<Block> mains(String title) {
    return blocks(title, MainsNet.of(rig, words));
  }

  List<Block> battery(String title) {
    return blocks(title, BatteryNet.of(rig, words));
  }

  List<Block> bank(String title) {
    return blocks(title, BankNet.of(rig, words, shown("bank.voltage"), shown("bank.capacity")));
  }

  private Optional<String> shown(String figure) {
    return figures.find(figure).map(f -> wording.amounts().text(f.number(), f.unit()));
  }

  /** One block a page; each but the first says that it goes on. */
  private List<Block> blocks(String title, Optional<Schematic> schematic) {
    SchematicWords key = key();
    List<Block> blocks = new ArrayList<>();
    for (Schematic part : schematic.map(s -> SchematicParts.of(s, key)).orElse(List.of())) {
      blocks.add(PlotBlocks.block(head(title, blocks.isEmpty()), SchematicView.draw(part, key)));
    }
    return blocks;
  }

  /** The title of a part of a drawing: all but the first say that it goes on. */
  String head(String title, boolean first) {
    return first || title.isEmpty() ? title : wording.phrase("net-goes-on", Map.of("title", title));
  }

  /** What lines and shapes mean, on every schematic alike. */
  SchematicWords key() {
    Map<Schematic.Line, String> letters = new EnumMap<>(Schematic.Line.class);
    Map<Schematic.Line, String> lines = new EnumMap<>(Schematic.Line.class);
    Map<Schematic.Shape, String> shapes = new EnumMap<>(Schematic.Shape.class);
    for (Schematic.Line line : Schematic.Line.values()) {
      letters.put(line, wording.phrase("net-letter-" + lower(line)));
      lines.put(line, wording.phrase("net-line-" + lower(line)));
    }
    for (Schematic.Shape shape : Schematic.Shape.values()) {
      shapes.put(shape, wording.phrase("net-shape-" + lower(shape)));
    }
    return new SchematicWords(letters, lines, shapes, wording.phrase("net-shut"));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
