package plycrag.document;

/** A canonical move of a router, apart from how any controller spells it. Lengths mm. */
public sealed interface Move {

  /** Straight up or down as fast as the machine can. */
  record RapidZ(double z) implements Move {}

  /** Across as fast as the machine can, at the height it has. */
  record RapidXy(double x, double y) implements Move {}

  /**
   * Straight down into the work.
   *
   * @param z where it ends
   * @param feed mm/min
   */
  record Plunge(double z, double feed) implements Move {}

  /**
   * Starts the spindle clockwise.
   *
   * @param speed revolutions per minute
   */
  record SpindleOn(double speed) implements Move {}

  /** Stops the spindle. */
  record SpindleOff() implements Move {}

  /** Waits. */
  record Dwell(double seconds) implements Move {}
}
