package plycrag.proof.replay;

import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;

/**
 * A straight way through the sheet.
 *
 * @param line of the program
 * @param from where it begins
 * @param to where it ends
 */
record CutMove(int line, TipPlace from, TipPlace to) {

  boolean isPlunge() {
    return from.isAbove(to);
  }

  double lowest() {
    return Math.min(from.z(), to.z());
  }

  double highest() {
    return Math.max(from.z(), to.z());
  }

  Coordinate middle() {
    return new Coordinate((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  /** How near the tool's centre comes to a place, seen from above. */
  double distance(Coordinate place) {
    return Distance.pointToSegment(place, from.coordinate(), to.coordinate());
  }

  double distance(Coordinate one, Coordinate other) {
    return Distance.segmentToSegment(from.coordinate(), to.coordinate(), one, other);
  }
}
