package plycrag.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.wall.Facet;

/**
 * Where two neighbouring walls do not run up to each other, of all heights at which both are there.
 * Between two heights at which neither has a corner both end in a straight line each.
 *
 * @param length over how much height, mm
 * @param widest the greatest distance between their climbing faces, mm
 * @param left the end of the left one there
 * @param right that of the right one
 */
record OpenCorner(double length, double widest, End left, End right) {
  /** What is less is a joint, and no gap (a choice, no source), mm. */
  private static final double JOINT = 5;

  /** Where a facet ends toward its neighbour at one height, in the room. */
  record End(Facet facet, Vector3 place) {}

  /** An edge of a facet that rises. */
  private record Edge(Facet facet, Coordinate from, Coordinate to) {
    static Stream<Edge> of(Facet facet) {
      return rise(facet) < Tolerance.SQUARE
          ? Stream.empty()
          : Shapes.outerEdges(facet.boundary()).stream()
              .map(edge -> new Edge(facet, edge.getCoordinateN(0), edge.getCoordinateN(1)))
              .filter(edge -> edge.from.y != edge.to.y);
    }

    private static double rise(Facet facet) {
      return facet.plane().z(1, 0) - facet.plane().z(0, 0);
    }

    Stream<Double> heights() {
      return Stream.of(facet.plane().z(from.y, 0), facet.plane().z(to.y, 0));
    }

    boolean isAt(double z) {
      double v = up(z);
      return Math.min(from.y, to.y) <= v && v < Math.max(from.y, to.y);
    }

    private double up(double z) {
      return (z - facet.plane().z(0, 0)) / rise(facet);
    }

    /** How far across its line is at a height, mm. */
    double across(double z) {
      return from.x + (up(z) - from.y) / (to.y - from.y) * (to.x - from.x);
    }

    End end(double z) {
      return new End(facet, facet.plane().toRoom(new Vector3(across(z), up(z), 0)));
    }
  }

  /** Between two runs of facets that stand on each other; nothing if they meet all along. */
  static Optional<OpenCorner> between(List<Facet> left, List<Facet> right) {
    List<Double> heights =
        Stream.concat(left.stream(), right.stream())
            .flatMap(Edge::of)
            .flatMap(Edge::heights)
            .sorted()
            .toList();
    List<OpenCorner> open = new ArrayList<>();
    for (int at = 1; at < heights.size(); at++) {
      double low = heights.get(at - 1);
      double high = heights.get(at);
      Optional<Edge> one = edge((low + high) / 2, left, 1);
      Optional<Edge> other = edge((low + high) / 2, right, -1);
      if (one.isPresent() && other.isPresent()) {
        open.add(between(low, high, one.get(), other.get()));
      }
    }
    double length = open.stream().mapToDouble(OpenCorner::length).sum();
    return open.stream()
        .max(Comparator.comparingDouble(OpenCorner::widest))
        .filter(most -> length > Tolerance.MARKED)
        .map(most -> new OpenCorner(length, most.widest, most.left, most.right));
  }

  /**
   * The edge in which a run ends at a height, to the right with a sign of 1, to the left with -1.
   */
  private static Optional<Edge> edge(double z, List<Facet> run, int sign) {
    return run.stream()
        .flatMap(
            facet ->
                Edge.of(facet)
                    .filter(edge -> edge.isAt(z))
                    .max(Comparator.comparingDouble(edge -> sign * edge.across(z)))
                    .stream())
        .findFirst();
  }

  /** From one height to another, over which both edges run: widest at one of them. */
  private static OpenCorner between(double low, double high, Edge left, Edge right) {
    Vector3 foot = right.end(low).place().minus(left.end(low).place());
    Vector3 head = right.end(high).place().minus(left.end(high).place());
    double widest = head.length() > foot.length() ? high : low;
    return new OpenCorner(
        (high - low) * (1 - closed(foot, head.minus(foot))),
        Math.max(foot.length(), head.length()),
        left.end(widest),
        right.end(widest));
  }

  /**
   * Over what part of a stretch two lines are no further apart than a joint: between the roots of
   * the square of their distance less that of a joint's.
   *
   * @param apart how they stand to each other at its foot
   * @param way how that changes up to its head
   */
  private static double closed(Vector3 apart, Vector3 way) {
    double square = way.dot(way);
    double half = apart.dot(way);
    double beyond = apart.dot(apart) - JOINT * JOINT;
    if (square < Tolerance.VANISHING) {
      return beyond > 0 ? 0 : 1;
    }
    double within = half * half - square * beyond;
    if (within <= 0) {
      return 0;
    }
    double from = Math.max(0, (-half - Math.sqrt(within)) / square);
    double to = Math.min(1, (-half + Math.sqrt(within)) / square);
    return Math.max(0, to - from);
  }
}
