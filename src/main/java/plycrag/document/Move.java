package plycrag.document;

import java.util.ArrayList;
import java.util.List;

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
   * Straight through the work.
   *
   * @param to where it ends
   * @param feed mm/min
   */
  record Cut(Xyz to, double feed) implements Move {}

  /**
   * Through the work along an arc of at most half a turn, which may rise or fall evenly.
   *
   * @param to where it ends
   * @param centre of the arc seen from above
   * @param clockwise seen from above
   * @param feed mm/min
   */
  record Arc(Xyz to, Xy centre, boolean clockwise, double feed) implements Move {}

  /**
   * A hole from across it down to its bottom and up again.
   *
   * @param place its centre
   * @param retract z from which it is drilled and to which the tool comes back
   * @param bottom z of its bottom
   * @param peck how deep the drill goes before it comes out to clear its chips; 0 in one go
   * @param feed mm/min
   */
  record DrillCycle(Xy place, double retract, double bottom, double peck, double feed)
      implements Move {
    /** How far above the last depth a rapid down ends; some controllers choose half of it. */
    private static final double BACK_OFF = 0.5;

    /** Rejects a hole that does not go down. */
    public DrillCycle {
      if (!(bottom < retract && peck >= 0)) {
        throw new IllegalArgumentException("not a hole: from " + retract + " to " + bottom);
      }
    }

    /**
     * The same move by move.
     *
     * @param height z of the tool before
     */
    public List<Move> steps(double height) {
      List<Move> steps = new ArrayList<>();
      steps.add(new RapidXy(place.x(), place.y()));
      if (height > retract) {
        steps.add(new RapidZ(retract));
      }
      double depth = retract;
      while (depth > bottom) {
        if (depth < retract) {
          steps.add(new RapidZ(depth + BACK_OFF));
        }
        depth = peck > 0 ? Math.max(bottom, depth - peck) : bottom;
        steps.add(new Plunge(depth, feed));
        steps.add(new RapidZ(retract));
      }
      return steps;
    }
  }

  /**
   * Another tool, spindle at rest; afterwards the tool's height is not known.
   *
   * @param number from 1
   * @param tool in words
   */
  record ToolChange(int number, String tool) implements Move {}

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
