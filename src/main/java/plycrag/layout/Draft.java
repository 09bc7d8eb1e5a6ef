package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;

/**
 * A member that has its place and has no mark yet.
 *
 * @param strip what it was wished to be
 * @param footprint what it takes of the plane of the sheets' back
 * @param sides how each side of the footprint goes on behind
 */
record Draft(Strip strip, Polygon footprint, List<SlopingSide> sides) {
  Draft {
    sides = List.copyOf(sides);
  }

  /** What it takes at its back. */
  Polygon far() {
    return Shapes.moved(footprint, side -> sides.get(side).slope() * strip.depth());
  }

  /** Whether its sides still come in the same order at its back, none of them turned round. */
  boolean keepsItsShape() {
    List<LineString> near = Shapes.outerEdges(footprint);
    List<LineString> back = Shapes.outerEdges(far());
    return IntStream.range(0, near.size())
        .allMatch(
            side -> {
              Coordinate from = near.get(side).getCoordinateN(0);
              Coordinate to = near.get(side).getCoordinateN(1);
              Coordinate farFrom = back.get(side).getCoordinateN(0);
              Coordinate farTo = back.get(side).getCoordinateN(1);
              return (to.x - from.x) * (farTo.x - farFrom.x)
                      + (to.y - from.y) * (farTo.y - farFrom.y)
                  > 0;
            });
  }

  /** The member. */
  Member marked(String mark) {
    return new Member(
        mark, strip.role(), strip.hold(), strip.direction(), footprint, far(), strip.depth());
  }

  Direction direction() {
    return strip.direction();
  }

  /** Where it lies along its direction, mm. */
  Direction.Span along() {
    return direction().span(footprint);
  }

  /** The sides of an area that were made by others' sides, or by the strip's own. */
  static List<SlopingSide> sides(Polygon area, List<SlopingSide> around, Strip strip) {
    List<SlopingSide> sides = new ArrayList<>();
    for (LineString edge : Shapes.outerEdges(area)) {
      sides.add(
          around.stream()
              .filter(side -> side.holds(edge))
              .findFirst()
              .map(side -> new SlopingSide(edge, side.slopeFor(edge)))
              .orElseGet(() -> own(edge, strip)));
    }
    return sides;
  }

  private static SlopingSide own(LineString edge, Strip strip) {
    boolean isLong = Direction.of(edge).isParallel(strip.direction());
    if (!isLong || strip.lean() == 0) {
      return new SlopingSide(edge, 0);
    }
    Direction across = strip.direction().across();
    boolean upper = across.along(edge.getCentroid()) > strip.beside().middle();
    return new SlopingSide(edge, upper ? strip.lean() : -strip.lean());
  }
}
