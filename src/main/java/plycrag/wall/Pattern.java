package plycrag.wall;

import java.util.List;

/**
 * How holes are set out over an area: a facet, or a zone of one.
 *
 * @param kind how they are set out
 * @param pitch for {@link Kind#GRID} and {@link Kind#OFFSET}
 * @param lines for {@link Kind#LINES}
 * @param density for {@link Kind#DENSITY}
 * @param scattering for {@link Kind#SCATTER}
 * @param fit how it lies in its area
 */
public record Pattern(
    Kind kind, Pitch pitch, Lines lines, Density density, Scattering scattering, Fit fit) {

  /**
   * What lies between neighbouring lines.
   *
   * @param across between columns, mm
   * @param up between rows, mm
   * @param topUp the same at the top of the area, mm
   */
  public record Pitch(double across, double up, double topUp) {}

  /**
   * Columns and rows as listed.
   *
   * @param columns from the area's left edge, ascending, mm
   * @param rows from its lower edge, ascending, mm
   */
  public record Lines(List<Double> columns, List<Double> rows) {

    /** Copies the lists. */
    public Lines {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }
  }

  /**
   * How a pattern lies in its area.
   *
   * @param symmetry whether one half of the area mirrors the other
   * @param setback least distance of a hole's centre from the area's outline, mm
   */
  public record Fit(Symmetry symmetry, double setback) {}

  /** Whether the rows of a grid are further apart above than below, or nearer. */
  public boolean fades() {
    return pitch.up() != pitch.topUp();
  }

  /** Whether holes stand in columns and rows. */
  public boolean hasLines() {
    return switch (kind) {
      case GRID, OFFSET, DENSITY, LINES -> true;
      case SCATTER, FILE, NONE -> false;
    };
  }

  /** The same with another setback, mm. */
  public Pattern withSetback(double other) {
    return new Pattern(kind, pitch, lines, density, scattering, new Fit(fit.symmetry(), other));
  }

  /**
   * Half of what lies between neighbours, mm: nothing between given lines or positions.
   *
   * @param sheet a stock sheet's area, mm²
   */
  public double halfSpacing(double sheet) {
    return switch (kind) {
      case GRID, OFFSET -> Math.min(pitch.across(), pitch.up()) / 2;
      case DENSITY -> density.spacing(sheet) / 2;
      case SCATTER -> scattering.spacing() / 2;
      case LINES, FILE, NONE -> 0;
    };
  }

  /** How holes are set out. */
  public enum Kind {
    /** Columns and rows at a pitch. */
    GRID,
    /** The same, every second row moved by half a pitch. */
    OFFSET,
    /** Columns and rows evenly apart, as many as make a number of inserts. */
    DENSITY,
    /** Columns and rows as listed. */
    LINES,
    /** Without order, no two nearer than a distance. */
    SCATTER,
    /** Where a file of positions says. */
    FILE,
    /** There are none. */
    NONE
  }

  /** Whether one half of an area mirrors the other. */
  public enum Symmetry {
    /** It need not. */
    NONE,
    /** Left and right of the line up the middle of its width. */
    LEFT_RIGHT
  }
}
