package plycrag.wall;

import java.util.Optional;
import plycrag.catalog.BoltThread;

/**
 * The inserts and their pattern.
 *
 * @param pattern how they are set out over a facet, its zones apart
 * @param positions the path of the list that tells where they are, from the parameter file's
 *     folder; for the pattern file
 * @param fastening what holds them in the sheet
 * @param body what of the sheet they take
 * @param bolt what a hold's bolt takes behind them
 * @param blocked what happens where something stands in their way
 */
public record Inserts(
    Pattern pattern,
    Optional<String> positions,
    Fastening fastening,
    Body body,
    BoltZone bolt,
    Blocked blocked) {

  /** How much of a sheet of a thickness flanges bear on: all of it, or what a recess leaves, mm. */
  public double under(double thickness) {
    return thickness - body.recess().map(Recess::depth).orElse(0.0);
  }

  /** Least distance of a hole's centre from the facet's outline, mm. */
  public double setback() {
    return pattern.fit().setback();
  }

  /**
   * What holds an insert in the sheet.
   *
   * @param kind of it
   * @param flangeScrews in the flange of each that is screwed on
   * @param thread of it, and of the bolts for holds
   */
  public record Fastening(Fixing kind, int flangeScrews, BoltThread thread) {}

  /**
   * What of the sheet an insert takes.
   *
   * @param hole diameter, mm
   * @param flange diameter, mm
   * @param barrel its length from the flange, mm
   * @param recess in which flanges lie; empty where they lie on the back
   */
  public record Body(double hole, double flange, double barrel, Optional<Recess> recess) {}

  /**
   * The space behind that a bolt's end may reach.
   *
   * @param zone its diameter, mm
   * @param reach how far behind the sheet it goes, mm
   */
  public record BoltZone(double zone, double reach) {}

  /**
   * What happens where something stands in the way of inserts.
   *
   * @param answer to it
   * @param greatestMove how far a column or a row may be moved then, mm
   */
  public record Blocked(WhenBlocked answer, double greatestMove) {}

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
