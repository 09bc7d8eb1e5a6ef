package plycrag.proof.replay;

import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Trig;

/** How far one sees something move from a place. */
final class ViewTurn {
  private static final double HALF_TURN = 180;

  private ViewTurn() {}

  /** The angle from one direction to another, degrees from -180 to 180, counter-clockwise. */
  static double about(Coordinate centre, Coordinate from, Coordinate to) {
    double ax = from.x - centre.x;
    double ay = from.y - centre.y;
    double bx = to.x - centre.x;
    double by = to.y - centre.y;
    double cross = ax * by - ay * bx;
    double dot = ax * bx + ay * by;
    if (dot >= 0) {
      return Trig.angle(cross, dot);
    }
    return (cross < 0 ? -HALF_TURN : HALF_TURN) - Trig.angle(cross, -dot);
  }
}
