package org.rigleaf.drawings;

import java.util.Map;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;

/**
 * What the key of a schematic says.
 *
 * @param letters the letter at each kind of line
 * @param lines what runs along it
 * @param shapes what each shape of box means
 * @param shut what a bar across a line means
 */
public record SchematicWords(
    Map<Line, String> letters, Map<Line, String> lines, Map<Shape, String> shapes, String shut) {
  /** Copies the maps. */
  public SchematicWords {
    letters = Map.copyOf(letters);
    lines = Map.copyOf(lines);
    shapes = Map.copyOf(shapes);
  }
}
