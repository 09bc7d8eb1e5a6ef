package plycrag.layout;

import plycrag.params.ClearanceParameters;
import plycrag.params.InsertParameters;
import plycrag.params.PatternParameters;
import plycrag.params.PatternParameters.Kind;
import plycrag.wall.Wall;

/**
 * How far a line of inserts keeps from what lies along it.
 *
 * @param inserts their sizes
 * @param clearance the least distances
 */
record AxisReach(InsertParameters inserts, ClearanceParameters clearance) {

  static AxisReach of(Wall wall) {
    return new AxisReach(wall.inserts(), wall.clearance());
  }

  /** From a line to timber that is as wide behind as in front, mm. */
  double toTimber() {
    return Math.max(flangeToTimber(), boltToTimber());
  }

  /** From a line to timber at the sheets' back, mm. */
  double flangeToTimber() {
    return inserts.flange() / 2 + clearance.insertToTimber();
  }

  /** From a line to timber where a bolt's end may be, mm. */
  double boltToTimber() {
    return inserts.boltZone() / 2 + clearance.boltToTimber();
  }

  /** From a line to the edge of a piece, mm. */
  double toEdge() {
    return Math.max(inserts.flange() / 2 + clearance.insertToEdge(), inserts.hole() / 2);
  }

  /**
   * From one line to the next, mm. Of neighbouring columns only every second one has an insert in
   * the same row, in an offset. Listed places keep apart one by one.
   */
  double toLine(PatternParameters pattern, Axis lines) {
    if (pattern.kind() == Kind.FILE) {
      return 0;
    }
    double reach = inserts.flange() + clearance.insertToInsert();
    boolean alternates =
        pattern.kind() == Kind.OFFSET && Math.min(pattern.pitchUp(), pattern.topPitchUp()) >= reach;
    return lines == Axis.UP && alternates ? reach / 2 : reach;
  }
}
