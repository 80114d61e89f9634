package org.rigleaf.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.rigleaf.source.ProblemsFound;

/**
 * A sheet of labels, in millimeters; {@code templates/labels/sheets.yaml} holds them.
 *
 * @param widthMm of one label
 * @param heightMm of one label
 * @param leftMm margin before the first column
 * @param topMm margin above the first row
 * @param acrossMm gap between columns
 * @param downMm gap between rows
 */
public record LabelGrid(
    String name,
    Paper paper,
    int columns,
    int rows,
    double widthMm,
    double heightMm,
    double leftMm,
    double topMm,
    double acrossMm,
    double downMm) {
  private static final String FILE = "/templates/labels/sheets.yaml";
  private static final double ROUNDED_MM = 0.2; // makers round what they print of their sheets
  private static final Map<String, LabelGrid> ALL = load();

  /** Refuses a sheet that does not add up to its paper. */
  public LabelGrid {
    double wide = 2 * leftMm + columns * widthMm + (columns - 1) * acrossMm;
    double high = 2 * topMm + rows * heightMm + (rows - 1) * downMm;
    if (Math.abs(wide - paper.widthMm()) > ROUNDED_MM
        || Math.abs(high - paper.heightMm()) > ROUNDED_MM) {
      throw new IllegalArgumentException(
          name + " adds up to " + wide + " x " + high + " mm, which is not " + paper.name());
    }
  }

  /** All label sheets by name. */
  public static Map<String, LabelGrid> all() {
    return ALL;
  }

  /** The usual one for a paper. */
  public static LabelGrid usual(Paper paper) {
    return ALL.values().stream().filter(g -> g.paper().equals(paper)).findFirst().orElseThrow();
  }

  /** From the edge of the paper to the label with this number on its page, counted from 0. */
  double left(int cell) {
    return leftMm + cell % columns * (widthMm + acrossMm);
  }

  /** The same from the top. */
  double top(int cell) {
    return topMm + cell / columns * (heightMm + downMm);
  }

  /** Labels a page. */
  int cells() {
    return columns * rows;
  }

  private static Map<String, LabelGrid> load() {
    try (InputStream in = LabelGrid.class.getResourceAsStream(FILE)) {
      return LabelGrids.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ProblemsFound e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }
}
