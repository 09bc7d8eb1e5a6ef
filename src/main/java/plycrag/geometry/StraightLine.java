package plycrag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction.Span;

/** A line on a facet, without ends; places on it are told by how far they lie along it. */
public final class StraightLine {
  private final Direction direction;
  private final double beside;

  /**
   * @param direction the way it runs
   * @param beside where it lies on the way across, mm
   */
  public StraightLine(Direction direction, double beside) {
    this.direction = direction;
    this.beside = beside;
  }

  /** The stretches inside an area, in order. */
  public List<Span> within(Polygon area) {
    Span span = direction.span(area);
    Coordinate from = direction.place(span.low() - 1, beside);
    Coordinate to = direction.place(span.high() + 1, beside);
    if (Convex.is(area)) {
      return Convex.shared(area, from, to).stream()
          .map(ends -> new Span(direction.along(ends.get(0)), direction.along(ends.get(1))))
          .toList();
    }
    Geometry inside = Shapes.shared(area, Shapes.exactLine(from, to));
    List<Span> stretches = new ArrayList<>();
    for (int at = 0; at < inside.getNumGeometries(); at++) {
      if (inside.getGeometryN(at) instanceof LineString line && line.getLength() > 0) {
        stretches.add(direction.span(line));
      }
    }
    stretches.sort(Comparator.comparingDouble(Span::low));
    return stretches;
  }

  /** What of stretches keeps a distance from an edge. */
  public List<Span> clearOf(List<Span> stretches, LineString edge, double distance) {
    Optional<Span> near = near(edge, distance);
    return near.isEmpty() ? stretches : without(stretches, near.get());
  }

  private static List<Span> without(List<Span> stretches, Span gap) {
    List<Span> rest = new ArrayList<>();
    for (Span stretch : stretches) {
      if (stretch.high() <= gap.low() || gap.high() <= stretch.low()) {
        rest.add(stretch);
        continue;
      }
      if (stretch.low() <= gap.low()) {
        rest.add(new Span(stretch.low(), gap.low()));
      }
      if (gap.high() <= stretch.high()) {
        rest.add(new Span(gap.high(), stretch.high()));
      }
    }
    return rest;
  }

  /** Where the line is nearer to a straight edge than a distance. */
  private Optional<Span> near(LineString edge, double distance) {
    Coordinate from = local(edge.getCoordinateN(0));
    Coordinate to = local(edge.getCoordinateN(1));
    List<Double> ends = new ArrayList<>();
    addRound(from, distance, ends);
    addRound(to, distance, ends);
    double length = from.distance(to);
    double du = distance * (to.y - from.y) / length;
    double dv = distance * (from.x - to.x) / length;
    addCrossing(moved(from, du, dv), moved(to, du, dv), ends);
    addCrossing(moved(from, -du, -dv), moved(to, -du, -dv), ends);
    return ends.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Span(
                ends.stream().mapToDouble(end -> end).min().orElseThrow(),
                ends.stream().mapToDouble(end -> end).max().orElseThrow()));
  }

  /** A place by how far it lies along the line and beside it. */
  private Coordinate local(Coordinate place) {
    return new Coordinate(direction.along(place), direction.across().along(place) - beside);
  }

  private static Coordinate moved(Coordinate place, double du, double dv) {
    return new Coordinate(place.x + du, place.y + dv);
  }

  private static void addRound(Coordinate centre, double radius, List<Double> ends) {
    double square = radius * radius - centre.y * centre.y;
    if (square > 0) {
      ends.add(centre.x - Math.sqrt(square));
      ends.add(centre.x + Math.sqrt(square));
    }
  }

  private static void addCrossing(Coordinate from, Coordinate to, List<Double> ends) {
    if (Math.min(from.y, to.y) <= 0
        && 0 <= Math.max(from.y, to.y)
        && Math.abs(to.y - from.y) > Tolerance.VANISHING) {
      ends.add(from.x - from.y * (to.x - from.x) / (to.y - from.y));
    }
  }
}
