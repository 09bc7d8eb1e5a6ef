package plycrag.params;

import java.util.List;

/**
 * The inserts and their pattern.
 *
 * @param pattern how they are set out
 * @param pitchAcross between neighbouring columns, mm
 * @param pitchUp between neighbouring rows, mm
 * @param topPitchUp the same at the top of a facet, mm
 * @param density for {@link Pattern#DENSITY}
 * @param symmetry whether one half of a facet mirrors the other
 * @param scattering for {@link Pattern#SCATTER}
 * @param columns for {@link Pattern#LINES}: from the facet's left edge, ascending, mm
 * @param rows for {@link Pattern#LINES}: from its lower edge, ascending, mm
 * @param setback least distance of a hole's centre from the facet's outline, mm
 * @param kind what holds them in the sheet
 * @param flangeScrews in the flange of each that is screwed on
 * @param hole diameter, mm
 * @param flange diameter, mm
 * @param barrel its length from the flange, mm
 * @param boltZone diameter of the space behind that a bolt's end may reach, mm
 * @param boltReach how far behind the sheet that space goes, mm
 * @param whenBlocked what happens where something stands in the way of inserts
 * @param greatestMove how far a column or a row may be moved then, mm
 */
public record InsertParameters(
    Pattern pattern,
    double pitchAcross,
    double pitchUp,
    double topPitchUp,
    Density density,
    Symmetry symmetry,
    Scattering scattering,
    List<Double> columns,
    List<Double> rows,
    double setback,
    Fixing kind,
    int flangeScrews,
    double hole,
    double flange,
    double barrel,
    double boltZone,
    double boltReach,
    WhenBlocked whenBlocked,
    double greatestMove) {

  /** Copies the lists. */
  public InsertParameters {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** Whether the rows of a grid are further apart above than below, or nearer. */
  public boolean fades() {
    return pitchUp != topPitchUp;
  }

  /** How inserts are set out. */
  public enum Pattern {
    /** Columns and rows at a pitch. */
    GRID,
    /** The same, every second row moved by half a pitch. */
    OFFSET,
    /** Columns and rows evenly apart, as many as make a number of inserts. */
    DENSITY,
    /** Columns and rows as listed. */
    LINES,
    /** Without order, no two nearer than a distance. */
    SCATTER
  }

  /** Whether one half of a facet mirrors the other. */
  public enum Symmetry {
    /** It need not. */
    NONE,
    /** Left and right of the line up the middle of its width. */
    LEFT_RIGHT
  }

  /** What holds an insert in the sheet. */
  public enum Fixing {
    /** Prongs that are hammered in. */
    HAMMER_IN,
    /** A flange with its own small screws. */
    SCREW_ON
  }

  /** What happens where something stands in the way of inserts. */
  public enum WhenBlocked {
    /** They stay, and are reported as errors. */
    REPORT,
    /** All columns move by one amount, and all rows; those still blocked are left out. */
    SHIFT,
    /** Single columns and rows move; inserts still blocked are left out. */
    NUDGE,
    /** They are left out, and are listed as warnings. */
    DROP,
    /** Columns, rows and the members that stand free move together. */
    SOLVE
  }
}
