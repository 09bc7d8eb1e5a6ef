package plycrag.wall;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;

/**
 * The two sides of a facet at which it may meet another wall, as lines across its slope.
 *
 * @param left the corner on the left, if there is one
 * @param right that on the right
 */
record Sides(Optional<Side> left, Optional<Side> right) {
  /** Further than any facet reaches, mm. */
  private static final double FAR = 1e6;

  /**
   * A corner on a facet.
   *
   * @param foot its u at the lower edge, mm
   * @param slope how much u grows for each millimetre up
   * @param turn by how much the faces are turned toward each other, degrees
   * @param other the facet beyond it, by name
   */
  record Side(double foot, double slope, double turn, String other) {
    /** Its u at a place up the slope, mm. */
    double at(double v) {
      return foot + slope * v;
    }
  }

  /**
   * A facet's boundary between its corners.
   *
   * @param wished its boundary if there were none
   * @param width of a rectangle, mm
   * @param length up the slope, mm
   */
  Polygon bounded(Optional<Polygon> wished, double width, double length) {
    if (left.isEmpty() && right.isEmpty()) {
      return wished.orElseGet(() -> Shapes.rectangle(0, 0, width, length));
    }
    double low = wished.isPresent() ? -FAR : 0;
    double high = wished.isPresent() ? FAR : width;
    Polygon between = between(low, high, length);
    return wished.map(area -> Shapes.largest(Shapes.shared(area, between))).orElse(between);
  }

  /** As far up as the two sides are apart. */
  private Polygon between(double low, double high, double length) {
    double lowFoot = left.map(side -> side.at(0)).orElse(low);
    double highFoot = right.map(side -> side.at(0)).orElse(high);
    double lowTop = left.map(side -> side.at(length)).orElse(low);
    double highTop = right.map(side -> side.at(length)).orElse(high);
    double foot = highFoot - lowFoot;
    double top = highTop - lowTop;
    if (top > 1) {
      return Shapes.polygon(
          List.of(
              new Coordinate(lowFoot, 0),
              new Coordinate(highFoot, 0),
              new Coordinate(highTop, length),
              new Coordinate(lowTop, length)));
    }
    double part = foot / (foot - top);
    return Shapes.polygon(
        List.of(
            new Coordinate(lowFoot, 0),
            new Coordinate(highFoot, 0),
            new Coordinate(lowFoot + part * (lowTop - lowFoot), part * length)));
  }
}
