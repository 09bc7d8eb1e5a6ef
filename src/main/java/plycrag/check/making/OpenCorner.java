package plycrag.check.making;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.wall.Facet;

/**
 * Where two neighbouring walls do not run up to each other, told from heights a centimetre apart at
 * which both are there.
 *
 * @param length over how much height, mm
 * @param widest the greatest distance between their climbing faces, mm
 * @param left the end of the left one there
 * @param right that of the right one
 */
record OpenCorner(double length, double widest, End left, End right) {
  private static final double STEP = 10;

  /** What is less is a joint, and no gap (a choice, no source), mm. */
  private static final double JOINT = 5;

  /** Where a facet ends toward its neighbour at one height, in the room. */
  record End(Facet facet, Vector3 place) {}

  /** Between two runs of facets that stand on each other; nothing if they meet all along. */
  static Optional<OpenCorner> between(List<Facet> left, List<Facet> right) {
    List<OpenCorner> open =
        DoubleStream.iterate(STEP / 2, z -> z < high(left) && z < high(right), z -> z + STEP)
            .boxed()
            .flatMap(z -> at(z, left, right).stream())
            .toList();
    return open.stream()
        .max(Comparator.comparingDouble(OpenCorner::widest))
        .map(most -> new OpenCorner(open.size() * STEP, most.widest, most.left, most.right));
  }

  private static double high(List<Facet> run) {
    return run.stream().mapToDouble(Facet::overallHeight).max().orElse(0);
  }

  private static Optional<OpenCorner> at(double z, List<Facet> left, List<Facet> right) {
    Optional<End> one = end(z, left, 1);
    Optional<End> other = end(z, right, -1);
    return one.flatMap(end -> other.map(beside -> of(end, beside)))
        .filter(open -> open.widest > JOINT);
  }

  private static OpenCorner of(End left, End right) {
    Vector3 apart = right.place().minus(left.place());
    return new OpenCorner(STEP, Math.sqrt(apart.dot(apart)), left, right);
  }

  /** The end of a run at a height, to the right with a sign of 1, to the left with -1. */
  private static Optional<End> end(double z, List<Facet> run, int sign) {
    return run.stream().flatMap(facet -> end(z, facet, sign).stream()).findFirst();
  }

  private static Optional<End> end(double z, Facet facet, int sign) {
    FacetPlane plane = facet.plane();
    double rise = plane.z(1, 0) - plane.z(0, 0);
    if (rise < Tolerance.SQUARE) {
      return Optional.empty();
    }
    double v = (z - plane.z(0, 0)) / rise;
    return Shapes.outerEdges(facet.boundary()).stream()
        .flatMap(edge -> across(edge, v))
        .max(Comparator.comparingDouble(u -> sign * u))
        .map(u -> new End(facet, plane.toRoom(new Vector3(u, v, 0))));
  }

  /** Where an edge crosses a height of its facet. */
  private static Stream<Double> across(LineString edge, double v) {
    Coordinate from = edge.getCoordinateN(0);
    Coordinate to = edge.getCoordinateN(1);
    boolean crosses = Math.min(from.y, to.y) <= v && v < Math.max(from.y, to.y);
    return crosses
        ? Stream.of(from.x + (v - from.y) / (to.y - from.y) * (to.x - from.x))
        : Stream.empty();
  }
}
