package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A convex body between two convex faces with as many corners each, such as a length of timber with
 * slanting ends.
 *
 * @param near the corners of one face, in order round it; a corner that joins to several repeats
 * @param far those of the other, each joined to the one of the same number
 */
public record Solid(List<Vector3> near, List<Vector3> far) {
  private static final Vector3 BEHIND = new Vector3(0, 0, 1);
  private static final List<Vector3> AXES =
      List.of(new Vector3(1, 0, 0), new Vector3(0, 1, 0), BEHIND);

  /** Halvings of a stretch of a metre that leave less than a nanometre. */
  private static final int STEPS = 60;

  /**
   * Copies the corners.
   *
   * @throws IllegalArgumentException if the faces differ in their number of corners
   */
  public Solid {
    near = List.copyOf(near);
    far = List.copyOf(far);
    if (near.size() != far.size()) {
      throw new IllegalArgumentException(near.size() + " corners against " + far.size());
    }
  }

  /**
   * Between two outlines on parallel planes, as (u, v, w).
   *
   * @param near the outline at {@code from}
   * @param from mm behind the face
   * @param far the outline at {@code to}, which begins at the matching corner
   * @param to mm behind the face
   */
  public static Solid between(Polygon near, double from, Polygon far, double to) {
    return new Solid(corners(near, from), corners(far, to));
  }

  private static List<Vector3> corners(Polygon outline, double w) {
    Coordinate[] ring = outline.getExteriorRing().getCoordinates();
    return Stream.of(ring).limit(ring.length - 1L).map(at -> new Vector3(at.x, at.y, w)).toList();
  }

  /**
   * Between two outlines on parallel planes whose corners need not match; openings in them are not
   * taken out. Where an outline is not convex the body is, for measuring, the hull of it.
   *
   * @param near the outline at {@code from}
   * @param from mm behind the face
   * @param far the outline at {@code to}
   * @param to mm behind the face
   */
  public static Solid joining(Polygon near, double from, Polygon far, double to) {
    return Loft.between(near, from, far, to);
  }

  /** The same body in other axes. */
  public Solid mapped(UnaryOperator<Vector3> axes) {
    return new Solid(near.stream().map(axes).toList(), far.stream().map(axes).toList());
  }

  /**
   * The least distance by which one of two bodies would have to move to be clear of the other, mm;
   * zero or less where they are apart. By the separating axis theorem: two convex bodies are apart
   * if and only if they are so along the normal of a face of one, or along a direction square to an
   * edge of each (Gottschalk, Lin and Manocha, 1996).
   */
  public double overlap(Solid other) {
    return overlap(other, Double.NEGATIVE_INFINITY);
  }

  /**
   * Whether two bodies overlap by more than so much, mm; less than nothing asks for bodies that
   * come as near. As {@link #overlap} has it, but bodies that are clear of each other along an axis
   * or a normal of one, as nearly all are, are not measured along the other ways.
   */
  public boolean overlapsByMoreThan(double limit, Solid other) {
    return reachesInto(other, limit) && overlap(other, limit) > limit;
  }

  private boolean reachesInto(Solid other, double limit) {
    for (Vector3 axis : AXES) {
      if (sharedAlong(axis, other) <= limit) {
        return false;
      }
    }
    return true;
  }

  /** The overlap, or what was found first that is not above a limit. */
  private double overlap(Solid other, double limit) {
    double least = overlapAlong(normals(), other, limit);
    if (least > limit) {
      least = Math.min(least, overlapAlong(other.normals(), other, limit));
    }
    return least > limit
        ? Math.min(least, overlapAlong(squareToEdges(other), other, limit))
        : least;
  }

  private double overlapAlong(List<Vector3> axes, Solid other, double limit) {
    double least = Double.MAX_VALUE;
    for (int at = 0; at < axes.size() && least > limit; at++) {
      Vector3 axis = axes.get(at);
      double length = axis.length();
      if (length > Tolerance.VANISHING) { // otherwise the edges are parallel
        least = Math.min(least, sharedAlong(axis, other) / length);
      }
    }
    return least;
  }

  private List<Vector3> squareToEdges(Solid other) {
    List<Vector3> others = other.edges();
    return edges().stream().flatMap(edge -> others.stream().map(edge::cross)).toList();
  }

  private double sharedAlong(Vector3 axis, Solid other) {
    return Math.min(highest(axis), other.highest(axis))
        - Math.max(lowest(axis), other.lowest(axis));
  }

  // Bodies are measured along so many ways that streams would take most of the time.
  private double highest(Vector3 axis) {
    double highest = axis.dot(near.get(0));
    for (int at = 0; at < near.size(); at++) {
      highest = Math.max(highest, Math.max(axis.dot(near.get(at)), axis.dot(far.get(at))));
    }
    return highest;
  }

  private double lowest(Vector3 axis) {
    return -highest(axis.times(-1));
  }

  private Stream<Vector3> corners() {
    return Stream.concat(near.stream(), far.stream());
  }

  /** The smallest box around it, seen along y: as (x, z). */
  public Envelope elevation() {
    Envelope box = new Envelope();
    corners().forEach(corner -> box.expandToInclude(corner.x(), corner.z()));
    return box;
  }

  private List<Vector3> normals() {
    return faces().map(Solid::normal).toList();
  }

  /** Its faces, the two first and then what joins them, each in order round it. */
  public Stream<List<Vector3>> faces() {
    Stream<List<Vector3>> sides =
        IntStream.range(0, near.size())
            .mapToObj(at -> side(at, (at + 1) % near.size()))
            .filter(side -> side.size() > 2);
    return Stream.concat(Stream.of(near, far), sides);
  }

  private List<Vector3> side(int at, int next) {
    List<Vector3> side = new ArrayList<>(4);
    for (Vector3 corner : List.of(near.get(at), near.get(next), far.get(next), far.get(at))) {
      if (!side.contains(corner)) {
        side.add(corner);
      }
    }
    return List.copyOf(side);
  }

  /** Square to a face; as long as twice its area if it is flat. */
  public static Vector3 normal(List<Vector3> face) {
    Vector3 sum = new Vector3(0, 0, 0);
    for (int at = 1; at + 1 < face.size(); at++) {
      Vector3 one = face.get(at).minus(face.get(0));
      sum = sum.plus(one.cross(face.get(at + 1).minus(face.get(0))));
    }
    return sum;
  }

  private List<Vector3> edges() {
    List<Vector3> edges = new ArrayList<>();
    for (int at = 0; at < near.size(); at++) {
      int next = (at + 1) % near.size();
      edges.add(near.get(next).minus(near.get(at)));
      edges.add(far.get(next).minus(far.get(at)));
      edges.add(far.get(at).minus(near.get(at)));
    }
    return edges;
  }

  /**
   * The least distance, level with the face, from a straight line square to it; below zero inside,
   * without end where the body does not reach as far.
   *
   * <p>All sections together are the body seen square to the face, which is convex: to a line
   * outside that view no section is nearer than the view. From a line inside it the distance to the
   * section at w is a convex function of w, so a search by thirds finds the least.
   *
   * @param axis where the line pierces the face, (u, v)
   * @param from where it begins behind the face, mm
   * @param to where it ends, mm
   */
  public double distance(Point axis, double from, double to) {
    double outside = outside(axis, from, to);
    return outside > 0
        ? outside
        : deepest(axis, Math.max(from, lowest(BEHIND)), Math.min(to, highest(BEHIND)));
  }

  /** That distance, but zero inside, where nothing is searched for. */
  public double outside(Point axis, double from, double to) {
    Geometry view = view(from, to);
    return view.isEmpty() ? Double.POSITIVE_INFINITY : view.distance(axis);
  }

  private double deepest(Point axis, double from, double to) {
    double low = from;
    double high = to;
    for (int step = 0; step < STEPS; step++) {
      double third = (high - low) / 3;
      if (sectionDistance(axis, low + third) <= sectionDistance(axis, high - third)) {
        high -= third;
      } else {
        low += third;
      }
    }
    return sectionDistance(axis, (low + high) / 2);
  }

  /** Corners of all sections between two depths. */
  private List<Coordinate> seen(double low, double high) {
    List<Coordinate> seen = new ArrayList<>(cut(low));
    seen.addAll(cut(high));
    corners()
        .filter(corner -> low < corner.z() && corner.z() < high)
        .forEach(corner -> seen.add(new Coordinate(corner.x(), corner.y())));
    return seen;
  }

  private double sectionDistance(Point axis, double w) {
    Geometry section = section(w);
    return section instanceof Polygon area ? Distances.from(axis, area) : section.distance(axis);
  }

  /**
   * The smallest box around the part between two depths, seen square to the face; empty where the
   * body does not reach there.
   *
   * @param from where the part begins behind the face, mm
   * @param to where it ends, mm
   */
  public Envelope shadow(double from, double to) {
    double low = Math.max(from, lowest(BEHIND));
    double high = Math.min(to, highest(BEHIND));
    Envelope box = new Envelope();
    if (low <= high) {
      seen(low, high).forEach(box::expandToInclude);
    }
    return box;
  }

  /**
   * The part between two depths, seen square to the face: convex; empty where the body does not
   * reach there. For measuring only, not on the grid.
   *
   * @param from where the part begins behind the face, mm
   * @param to where it ends, mm
   */
  public Geometry view(double from, double to) {
    double low = Math.max(from, lowest(BEHIND));
    double high = Math.min(to, highest(BEHIND));
    return Hulls.hull(low > high ? List.of() : seen(low, high));
  }

  /** What a plane at w cuts. */
  private Geometry section(double w) {
    return Hulls.hull(cut(w));
  }

  /** Where a plane at w meets the lines between corners on its sides; their hull is the section. */
  private List<Coordinate> cut(double w) {
    List<Vector3> corners = corners().toList();
    List<Coordinate> points = new ArrayList<>();
    for (Vector3 one : corners) {
      for (Vector3 other : corners) {
        if (one.z() <= w && w <= other.z()) {
          double part = other.z() > one.z() ? (w - one.z()) / (other.z() - one.z()) : 0;
          points.add(
              new Coordinate(
                  one.x() + part * (other.x() - one.x()), one.y() + part * (other.y() - one.y())));
        }
      }
    }
    return points;
  }
}
