package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.StraightLine;
import plycrag.geometry.Tolerance;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.MarkingGrid;
import plycrag.units.Tape;
import plycrag.wall.Clearances;
import plycrag.wall.Facet;
import plycrag.wall.Screws;
import plycrag.wall.Wall;

/**
 * Places the screws of one bearing.
 *
 * <p>Across, they lie on the member's middle, half as deep as they go, where the distances to the
 * piece's edges allow it, else on the middle of the bearing. Along, the first and the last keep
 * clear of the member's ends and as far from the piece's edges as the line itself does; the others
 * stand evenly between them, at the edge spacing where the member runs along an edge of the piece,
 * at the field spacing elsewhere. On a member that slants every screw is moved to the marking grid
 * by itself, for which room is kept.
 */
record ScrewSpacing(
    Screws screws,
    Clearances clearance,
    Tape tape,
    double width,
    double length,
    double thickness,
    double overhang) {
  /** How far around a place on a slanting line the marking grid is searched, in its steps. */
  private static final int STEPS = 2;

  static ScrewSpacing of(Wall wall, Facet facet) {
    return new ScrewSpacing(
        wall.screws(),
        wall.clearance(),
        wall.tape(),
        facet.width(),
        facet.length(),
        wall.sheet().thickness(),
        wall.overhang(facet));
  }

  /** The line's place across the member, mm: its middle where screws have no room. */
  double across(Bearing bearing) {
    return roomAcross(bearing).orElseGet(() -> snapped(bearing.beside().middle(), bearing));
  }

  /** Where across the member a line of screws keeps all its distances, mm, if it does anywhere. */
  OptionalDouble roomAcross(Bearing bearing) {
    Direction across = bearing.direction().across();
    double distance = clearance.screw().toSheetEdge() + offLine(bearing);
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    for (LineString edge : bearing.coreEdgesAlong()) {
      double place = across.along(edge.getCoordinateN(0));
      boolean insideAbove = isInsideAbove(edge, across);
      if (insideAbove && Tolerance.isLess(place, bearing.beside().high())) {
        least = Math.max(least, up(place + distance, bearing));
      }
      if (!insideAbove && Tolerance.isMore(place, bearing.beside().low())) {
        most = Math.min(most, down(place - distance, bearing));
      }
    }
    double middle = across.span(bearing.member().section(within(bearing.member()) / 2)).middle();
    double place = snapped(middle, bearing);
    if (place < least || place > most) {
      place = Math.max(least, Math.min(place, most));
    }
    return least <= most && isInside(place, bearing)
        ? OptionalDouble.of(place)
        : OptionalDouble.empty();
  }

  /** Whether a core, which lies on the left of its edges, is on the upper side of one. */
  private static boolean isInsideAbove(LineString edge, Direction across) {
    Coordinate from = edge.getCoordinateN(0);
    Coordinate to = edge.getCoordinateN(1);
    return (from.y - to.y) * across.u() + (to.x - from.x) * across.v() > 0;
  }

  private double snapped(double place, Bearing bearing) {
    Direction direction = bearing.direction();
    return direction.isSquare()
        ? new MarkingGrid(tape, direction.equals(Direction.UP) ? width : length).snap(place)
        : place;
  }

  private double up(double place, Bearing bearing) {
    return bearing.direction().isSquare() ? tape.snapUp(place) : place;
  }

  private double down(double place, Bearing bearing) {
    return bearing.direction().isSquare() ? tape.snapDown(place) : place;
  }

  /** Whether a screw keeps its distance from the member's sides all the way in. */
  private boolean isInside(double place, Bearing bearing) {
    Direction across = bearing.direction().across();
    Span near = across.span(bearing.member().footprint());
    Span deep = across.span(bearing.member().section(within(bearing.member())));
    double low = Math.max(near.low(), deep.low());
    double high = Math.min(near.high(), deep.high());
    double side = Math.min(place - low, high - place);
    return Tolerance.atLeast(side, clearance.screw().toMemberEdge() + offLine(bearing));
  }

  /**
   * How far off a slanting line the nearest place on the marking grid may lie, mm: half the widest
   * gap between the distances at which the nine places around lie off it.
   */
  private double offLine(Bearing bearing) {
    Direction way = bearing.direction();
    double flat = Math.min(Math.abs(way.u()), Math.abs(way.v()));
    double steep = Math.max(Math.abs(way.u()), Math.abs(way.v()));
    double gap = Math.max(Math.min(flat, steep - flat), Math.abs(steep - 2 * flat));
    return way.isSquare() ? 0 : gap / 2 * tape.unit().markingGrid();
  }

  /** How deep a screw goes into a member, mm. */
  private double within(Member member) {
    return Math.min(screws.length() - thickness, member.depth());
  }

  /**
   * The screws, in order along the member.
   *
   * @param across the line's place, mm
   * @param spacing the greatest, mm
   * @param taken by inserts along it, from which screws slide
   */
  List<Point> along(Bearing bearing, double across, double spacing, List<Span> taken) {
    List<Double> places = new ArrayList<>();
    Span bearer = bearing.along();
    for (Span stretch : stretches(bearing, across)) {
      boolean touches = stretch.low() < bearer.high() && bearer.low() < stretch.high();
      if (touches) {
        places.addAll(even(stretch, bearing, tape.snapDown(spacing), taken));
      }
    }
    if (places.isEmpty() && bearing.area().isRectangle() && bearing.takesWholeMember()) {
      places.add(tape.snap(bearer.middle()));
    }
    return places.stream().map(place -> point(place, across, bearing)).toList();
  }

  /** The greatest spacing on a bearing by itself, mm. */
  double greatest(Bearing bearing) {
    return bearing.isAtEdge(overhang) ? screws.edgeSpacing() : screws.fieldSpacing();
  }

  private Point point(double along, double across, Bearing bearing) {
    Coordinate place = bearing.direction().place(along, across);
    return bearing.direction().isSquare()
        ? Shapes.point(place.x, place.y)
        : onGrid(place, across, bearing.direction().across());
  }

  /** The place on the marking grid, a few steps around, that lies nearest to the line. */
  private Point onGrid(Coordinate place, double across, Direction beside) {
    double grid = tape.unit().markingGrid();
    Point best = Shapes.point(tape.snap(place.x), tape.snap(place.y));
    for (int right = -STEPS; right <= STEPS; right++) {
      for (int up = -STEPS; up <= STEPS; up++) {
        Point other =
            Shapes.point(tape.snap(place.x + right * grid), tape.snap(place.y + up * grid));
        double gain = off(best, across, beside) - off(other, across, beside);
        if (gain > Tolerance.GRID && place.distance(other.getCoordinate()) <= furthest()) {
          best = other;
        }
      }
    }
    return best;
  }

  /** How far a screw may be moved to lie on the grid, mm. */
  private double furthest() {
    return (STEPS + 0.5) * tape.unit().markingGrid();
  }

  private static double off(Point place, double across, Direction beside) {
    return Math.abs(beside.along(place) - across);
  }

  /** Where screws may stand on the line. */
  private List<Span> stretches(Bearing bearing, double across) {
    Member member = bearing.member();
    StraightLine line = new StraightLine(bearing.direction(), across);
    double inset =
        Math.max(clearance.screw().toSheetEdge(), tape.snapDown(member.breadth() / 2))
            + (bearing.direction().isSquare() ? 0 : furthest());
    List<Span> stretches = line.within(bearing.core());
    for (LineString edge : bearing.coreEdgesAcross()) {
      stretches = line.clearOf(stretches, edge, inset);
    }
    stretches = inside(stretches, member.footprint(), line, bearing);
    return member.isSquare()
        ? stretches
        : inside(stretches, member.section(within(member)), line, bearing);
  }

  /** What lies inside a member and keeps clear of its ends. */
  private List<Span> inside(
      List<Span> stretches, Polygon member, StraightLine line, Bearing bearing) {
    List<Span> clear = new ArrayList<>();
    for (Span timber : line.within(member)) {
      for (Span stretch : stretches) {
        double low = Math.max(timber.low(), stretch.low());
        double high = Math.min(timber.high(), stretch.high());
        if (low <= high) {
          clear.add(new Span(low, high));
        }
      }
    }
    double end =
        clearance.screw().toMemberEnd() + (bearing.direction().isSquare() ? 0 : furthest());
    for (LineString edge : Shapes.outerEdges(member)) {
      if (!Direction.of(edge).isParallel(bearing.direction())) {
        clear = new ArrayList<>(line.clearOf(clear, edge, end));
      }
    }
    return clear;
  }

  private List<Double> even(Span stretch, Bearing bearing, double greatest, List<Span> taken) {
    double first = up(stretch.low(), bearing);
    double last = down(stretch.high(), bearing);
    if (last < first) {
      return List.of();
    }
    int gaps = (int) Tolerance.wholeUp((last - first) / greatest);
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < gaps; at++) {
      double place = first + (last - first) * at / gaps;
      places.add(bearing.direction().isSquare() ? tape.snap(place) : place);
    }
    places.add(last);
    SlidingScrews sliding =
        new SlidingScrews(first, last, greatest, tape.unit().markingGrid(), taken);
    return sliding.areFree(places) ? places : sliding.nearest(places).orElse(places);
  }
}
