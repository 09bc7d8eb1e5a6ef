package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.FoldCut;
import plycrag.wall.Frame;

/**
 * Timber along the sides of a facet's ground: plates along those that are level, rakes along those
 * that slant. Along those that run up stand studs, which are planned with the others.
 */
final class EdgeStrips {
  /** Timber goes on so many breadths beyond a corner, for what it meets there to cut it. */
  private static final double REACH = 20;

  /** The cosine of the angle up to which a corner turns that is blunt: 45°. */
  private static final double BLUNT = 0.7071;

  /** How long a stretch of a side may stand from timber, mm (a choice). */
  private static final double FURTHEST = 80;

  private final Polygon outer;
  private final List<FoldCut> cuts;
  private final Frame frame;
  private final double rim;

  /**
   * @param outer the ground's outer edge, in the order of the cuts
   * @param cuts how timber ends at each side
   * @param frame what it is made of
   * @param rim how far a short stretch of a side may stand from timber, mm
   */
  EdgeStrips(Polygon outer, List<FoldCut> cuts, Frame frame, double rim) {
    this.outer = outer;
    this.cuts = cuts;
    this.frame = frame;
    this.rim = rim;
  }

  /** Along level sides, from below. */
  List<WishedMember> plates() {
    return wishes(MemberRole.PLATE).stream()
        .sorted(Comparator.comparingDouble(wished -> wished.beside().low()))
        .toList();
  }

  /** Along slanting sides; where those have no room for screws, with a square one beside each. */
  List<WishedMember> rakes() {
    return wishes(MemberRole.RAKE);
  }

  private List<WishedMember> wishes(MemberRole role) {
    List<WishedMember> wishes = new ArrayList<>();
    List<LineString> edges = Shapes.outerEdges(outer);
    for (int side = 0; side < edges.size(); side++) {
      if (role == role(edges.get(side))) {
        wishes.add(wished(side, edges, role));
      }
      if (role == MemberRole.RAKE && role == role(edges.get(side)) && cuts.get(side).crowded()) {
        wishes.add(beside(side, edges));
      }
    }
    wishes.removeIf(wished -> wished.area().getArea() < Tolerance.TOUCH);
    return wishes;
  }

  private static MemberRole role(LineString edge) {
    Direction direction = Direction.of(edge);
    if (direction.equals(Direction.LEVEL)) {
      return MemberRole.PLATE;
    }
    return direction.equals(Direction.UP) ? MemberRole.STUD : MemberRole.RAKE;
  }

  private WishedMember wished(int side, List<LineString> edges, MemberRole role) {
    FoldCut cut = cuts.get(side);
    Lie lie = new Lie(0, cut.breadth(frame.breadth()), cut.depth(frame.depth()), cut.slope());
    return wished(side, edges, role, lie);
  }

  /** A square rake beside one that leans. */
  private WishedMember beside(int side, List<LineString> edges) {
    double from = cuts.get(side).breadth(frame.breadth());
    return wished(side, edges, MemberRole.RAKE, new Lie(from, frame.breadth(), frame.depth(), 0));
  }

  /**
   * How timber lies along a side.
   *
   * @param from where it begins, inward, mm
   * @param breadth against the sheets' back, mm
   * @param depth behind it, mm
   * @param slope how far it goes outward for each millimetre behind
   */
  private record Lie(double from, double breadth, double depth, double slope) {
    double inner() {
      return from + breadth;
    }
  }

  private WishedMember wished(int side, List<LineString> edges, MemberRole role, Lie lie) {
    LineString edge = edges.get(side);
    int count = edges.size();
    Coordinate from = edge.getCoordinateN(0);
    Coordinate to = edge.getCoordinateN(1);
    double length = from.distance(to);
    double du = (to.x - from.x) / length;
    double dv = (to.y - from.y) / length;
    LineString previous = edges.get((side + count - 1) % count);
    LineString next = edges.get((side + 1) % count);
    Coordinate inside = new Coordinate(from.x - lie.inner() * dv, from.y + lie.inner() * du);
    Coordinate beyond = new Coordinate(to.x - lie.inner() * dv, to.y + lie.inner() * du);
    double before =
        goesOn(previous, edge)
            ? Math.min(reach(from, -du, -dv, lie), reach(inside, -du, -dv, lie))
            : turnsLeft(previous, edge)
                ? 0
                : past(edge, side, previous, (side + count - 1) % count);
    double after =
        goesOn(edge, next)
            ? Math.min(reach(to, du, dv, lie), reach(beyond, du, dv, lie))
            : turnsLeft(edge, next) ? 0 : past(edge, side, next, (side + 1) % count);
    double mitredBefore = mitre(previous, edge);
    double mitredAfter = mitre(edge, next);
    List<Coordinate> corners = new ArrayList<>();
    for (double inward : new double[] {lie.from(), lie.inner()}) {
      double low = -before + inward * mitredBefore;
      double high = length + after - inward * mitredAfter;
      corners.add(new Coordinate(from.x + low * du - inward * dv, from.y + low * dv + inward * du));
      corners.add(
          new Coordinate(from.x + high * du - inward * dv, from.y + high * dv + inward * du));
    }
    Collections.swap(corners, 2, 3);
    Direction direction = Direction.of(edge);
    Direction across = direction.across();
    boolean outwardIsUp = dv * across.u() - du * across.v() > 0;
    return new WishedMember(
        role,
        Fixity.EDGE,
        direction,
        Shapes.polygon(corners),
        lie.depth(),
        outwardIsUp ? lie.slope() : -lie.slope() + 0.0);
  }

  /** Whether timber goes on beyond a corner: not where it is mitred or in a notch. */
  private static boolean goesOn(LineString edge, LineString next) {
    return turnsLeft(edge, next) && mitre(edge, next) == 0;
  }

  /**
   * The tangent by which a strip is cut at a blunt corner with another that slants or runs up, each
   * to half of it: neither could end against the long side of the other. 0 where it is not.
   */
  private static double mitre(LineString edge, LineString next) {
    boolean isLevel = role(edge) == MemberRole.PLATE || role(next) == MemberRole.PLATE;
    if (isLevel || !turnsLeft(edge, next)) {
      return 0;
    }
    double along = dot(edge, next) / (edge.getLength() * next.getLength());
    return along < BLUNT ? 0 : Math.sqrt((1 - along) / (1 + along));
  }

  /**
   * How far a rake goes on past a notch, inside the facet, mm.
   *
   * <p>Where an outside corner of walls ends and the side goes on free of it, the rake along the
   * corner goes on so far that the side stands no further from it than it may, and the timber of
   * the free side begins there ({@code below zero}): further down it would stand in the frame of
   * the other wall, whose back rises above its upper edge where it leans. Where the next side is
   * too short for a stud, the rake backs it, down to the plate.
   */
  private double past(LineString edge, int side, LineString next, int beside) {
    double sine = Direction.of(edge).sine(Direction.of(next));
    double cosine = Math.sqrt(1 - sine * sine);
    boolean isShort = Math.min(edge.getLength(), next.getLength()) < frame.breadth();
    if (role(edge) != MemberRole.RAKE || cosine < BLUNT || isShort) {
      return 0;
    }
    double allowed = Math.min(rim / sine, FURTHEST / cosine);
    if (cuts.get(side).slope() < 0 && cuts.get(beside).bevel() == 0) {
      return allowed;
    }
    if (cuts.get(beside).slope() < 0 && cuts.get(side).bevel() == 0) {
      return role(next) == MemberRole.RAKE ? -Math.min(allowed * cosine, edge.getLength()) : 0;
    }
    return isStub(next, cuts.get(beside)) ? next.getLength() / cosine : 0;
  }

  /** Whether what a plate leaves of an upright side is shorter than a stud there is broad. */
  private boolean isStub(LineString edge, FoldCut cut) {
    double left = edge.getLength() - frame.breadth();
    return role(edge) == MemberRole.STUD && left < cut.breadth(frame.breadth());
  }

  private static double dot(LineString edge, LineString next) {
    Coordinate a = edge.getCoordinateN(0);
    Coordinate b = edge.getCoordinateN(1);
    Coordinate c = next.getCoordinateN(0);
    Coordinate d = next.getCoordinateN(1);
    return (b.x - a.x) * (d.x - c.x) + (b.y - a.y) * (d.y - c.y);
  }

  /** How far timber may go on from its end before it is back on the facet, past a notch. */
  private double reach(Coordinate end, double du, double dv, Lie lie) {
    double most = REACH * lie.breadth();
    Geometry inside =
        Shapes.shared(Shapes.line(end.x, end.y, end.x + most * du, end.y + most * dv), outer);
    return IntStream.range(0, inside.getNumGeometries())
        .mapToObj(inside::getGeometryN)
        .mapToDouble(part -> part.distance(Shapes.point(end.x, end.y)))
        .filter(distance -> distance > Tolerance.TOUCH)
        .min()
        .orElse(most);
  }

  private static boolean turnsLeft(LineString edge, LineString next) {
    Coordinate a = edge.getCoordinateN(0);
    Coordinate b = edge.getCoordinateN(1);
    Coordinate c = next.getCoordinateN(1);
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) > 0;
  }

  /** The sides that run straight up, as places of studs. */
  List<StudPlan.Station> uprights() {
    return upright().mapToObj(this::station).toList();
  }

  /** From where to where the sides at which a stud stands go up, from below, mm. */
  List<Direction.Span> sides(StudPlan.Stud stud) {
    return upright()
        .filter(side -> station(side).studs().contains(stud))
        .mapToObj(side -> Direction.UP.span(Shapes.outerEdges(outer).get(side)))
        .sorted(Comparator.comparingDouble(Direction.Span::low))
        .toList();
  }

  private IntStream upright() {
    List<LineString> edges = Shapes.outerEdges(outer);
    return IntStream.range(0, edges.size())
        .filter(side -> role(edges.get(side)) == MemberRole.STUD);
  }

  private StudPlan.Station station(int side) {
    LineString edge = Shapes.outerEdges(outer).get(side);
    boolean isRight = edge.getCoordinateN(1).y > edge.getCoordinateN(0).y;
    return StudPlan.Station.edge(edge.getCoordinateN(0).x, isRight, cuts.get(side), frame);
  }
}
