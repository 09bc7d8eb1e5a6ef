package plycrag.stock;

import java.util.Optional;
import plycrag.catalog.Bolt;
import plycrag.catalog.BoltCatalog;
import plycrag.solve.fixing.ThroughBolt;
import plycrag.wall.Wall;

/**
 * The bolts that hold two members back to back at a fold.
 *
 * @param diameter mm
 * @param grip the timber between their washers, mm
 * @param least they must be long under the head, mm
 */
record BoltSize(double diameter, double grip, double least) {
  static BoltSize of(Wall wall) {
    double diameter = wall.joints().bolts().diameter();
    double grip = 2 * wall.frame().breadth();
    return new BoltSize(diameter, grip, ThroughBolt.leastLength(grip, diameter));
  }

  /** The length of the shortest that is sold and long enough, mm; empty if none is. */
  Optional<Double> length() {
    return BoltCatalog.shortest(diameter, least).map(Bolt::length);
  }
}
