package plycrag.wall;

import java.util.List;

/**
 * How holes are set out over an area: a facet, or a zone of one.
 *
 * @param kind how they are set out
 * @param pitchAcross between neighbouring columns, mm
 * @param pitchUp between neighbouring rows, mm
 * @param topPitchUp the same at the top of the area, mm
 * @param density for {@link Pattern.Kind#DENSITY}
 * @param symmetry whether one half of the area mirrors the other
 * @param scattering for {@link Pattern.Kind#SCATTER}
 * @param columns for {@link Pattern.Kind#LINES}: from the area's left edge, ascending, mm
 * @param rows for {@link Pattern.Kind#LINES}: from its lower edge, ascending, mm
 * @param setback least distance of a hole's centre from the area's outline, mm
 */
public record Pattern(
    Kind kind,
    double pitchAcross,
    double pitchUp,
    double topPitchUp,
    Density density,
    Symmetry symmetry,
    Scattering scattering,
    List<Double> columns,
    List<Double> rows,
    double setback) {

  /** Copies the lists. */
  public Pattern {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** Whether the rows of a grid are further apart above than below, or nearer. */
  public boolean fades() {
    return pitchUp != topPitchUp;
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
    return new Pattern(
        kind,
        pitchAcross,
        pitchUp,
        topPitchUp,
        density,
        symmetry,
        scattering,
        columns,
        rows,
        other);
  }

  /**
   * Half of what lies between neighbours, mm: nothing between given lines or positions.
   *
   * @param sheet a stock sheet's area, mm²
   */
  public double halfSpacing(double sheet) {
    return switch (kind) {
      case GRID, OFFSET -> Math.min(pitchAcross, pitchUp) / 2;
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
