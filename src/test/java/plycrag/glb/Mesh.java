package plycrag.glb;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A body by its triangles, counter-clockwise from outside; m. */
public record Mesh(List<Triangle> triangles) {
  private static final double MILLIMETRE = 1e-3;

  /** What counts as flat: rounding to micrometres on either side. */
  private static final double FLAT = 0.01 * MILLIMETRE;

  public Mesh {
    triangles = List.copyOf(triangles);
  }

  /** Three corners. */
  public record Triangle(Space a, Space b, Space c) {
    List<Space> corners() {
      return List.of(a, b, c);
    }

    /** As long as twice its area. */
    Space normal() {
      return b.minus(a).cross(c.minus(a));
    }
  }

  /** What lies behind a plane: no further along a way of length one than a distance. */
  private record Half(Space outward, double distance) {
    double above(Space place) {
      return outward.dot(place) - distance;
    }
  }

  private record Edge(Space from, Space to) {}

  /** The sum of the pyramids from the origin, m³; a mesh turned inside out has less than none. */
  public double volume() {
    return triangles.stream().mapToDouble(one -> one.a().dot(one.b().cross(one.c())) / 6).sum();
  }

  /** Whether along every edge there are two triangles that run along it in opposite ways. */
  public boolean isWatertight() {
    Map<Edge, Integer> edges = new HashMap<>();
    for (Triangle one : triangles) {
      edges.merge(new Edge(one.a(), one.b()), 1, Integer::sum);
      edges.merge(new Edge(one.b(), one.c()), 1, Integer::sum);
      edges.merge(new Edge(one.c(), one.a()), 1, Integer::sum);
    }
    return !edges.isEmpty()
        && edges.entrySet().stream()
            .allMatch(
                edge ->
                    edge.getValue() == 1
                        && edges.containsKey(new Edge(edge.getKey().to(), edge.getKey().from())));
  }

  /** Behind a mirror, counter-clockwise there too. */
  Mesh mirrored() {
    return new Mesh(
        triangles.stream()
            .map(one -> new Triangle(one.a().mirrored(), one.c().mirrored(), one.b().mirrored()))
            .toList());
  }

  /** All corners, one as often as it has triangles. */
  public Stream<Space> corners() {
    return triangles.stream().flatMap(one -> one.corners().stream());
  }

  /** Whether no corner is in front of any face. */
  public boolean isConvex() {
    List<Space> corners = corners().distinct().toList();
    return halves(0).stream()
        .allMatch(half -> corners.stream().allMatch(corner -> half.above(corner) < 10 * FLAT));
  }

  /** The planes of its faces, moved inward; slivers have none to speak of. */
  private List<Half> halves(double inward) {
    List<Half> halves = new ArrayList<>();
    for (Triangle one : triangles) {
      Space normal = one.normal();
      if (normal.length() > MILLIMETRE * MILLIMETRE) {
        Space outward = normal.times(1 / normal.length());
        halves.add(new Half(outward, outward.dot(one.a()) - inward));
      }
    }
    return halves;
  }

  /**
   * Whether some of another body, convex or not, lies deeper than a depth below all faces of this
   * one, which is convex. Of two convex bodies that is so only if no way of that length or less
   * would part them.
   */
  public boolean holdsDeeply(Mesh other, double depth) {
    List<Half> core = halves(depth);
    return other.triangles.stream().anyMatch(one -> reaches(one.corners(), core))
        || (core.stream().allMatch(half -> half.above(middle()) < 0) && other.holds(middle()));
  }

  /**
   * Whether a place on the surface of one of two bodies, convex or not, lies deeper than a depth in
   * the other; places are a millimetre apart.
   */
  public boolean shares(Mesh other, double depth) {
    return isIn(other, depth) || other.isIn(this, depth);
  }

  private boolean isIn(Mesh other, double depth) {
    Space low = new Space(other.least(Space::x), other.least(Space::y), other.least(Space::z));
    Space high = new Space(other.most(Space::x), other.most(Space::y), other.most(Space::z));
    return triangles.stream()
        .filter(one -> !other.isFarFrom(new Mesh(List.of(one))))
        .flatMap(Mesh::places)
        .filter(place -> place.x() > low.x() && place.y() > low.y() && place.z() > low.z())
        .filter(place -> place.x() < high.x() && place.y() < high.y() && place.z() < high.z())
        .filter(other::holds)
        .anyMatch(place -> other.triangles.stream().allMatch(one -> distance(one, place) > depth));
  }

  private static Stream<Space> places(Triangle one) {
    Space first = one.b().minus(one.a());
    Space second = one.c().minus(one.a());
    int steps = 1 + (int) (Math.max(first.length(), second.length()) / MILLIMETRE);
    return IntStream.rangeClosed(0, steps)
        .boxed()
        .flatMap(
            along ->
                IntStream.rangeClosed(0, steps - along)
                    .mapToObj(
                        across ->
                            one.a()
                                .plus(first.times((double) along / steps))
                                .plus(second.times((double) across / steps))));
  }

  private static double distance(Triangle one, Space from) {
    Space normal = one.normal();
    boolean isOver =
        normal.length() > 0
            && side(one.a(), one.b(), normal, from) >= 0
            && side(one.b(), one.c(), normal, from) >= 0
            && side(one.c(), one.a(), normal, from) >= 0;
    return isOver
        ? Math.abs(normal.dot(from.minus(one.a()))) / normal.length()
        : Math.min(
            distance(one.a(), one.b(), from),
            Math.min(distance(one.b(), one.c(), from), distance(one.c(), one.a(), from)));
  }

  private static double side(Space from, Space to, Space normal, Space place) {
    return normal.cross(to.minus(from)).dot(place.minus(from));
  }

  private static double distance(Space from, Space to, Space place) {
    Space way = to.minus(from);
    double length = way.dot(way);
    double along = length > 0 ? place.minus(from).dot(way) / length : 0;
    return place.minus(from.plus(way.times(Math.max(0, Math.min(1, along))))).length();
  }

  private Space middle() {
    List<Space> corners = corners().distinct().toList();
    Space sum = corners.stream().reduce(new Space(0, 0, 0), Space::plus);
    return sum.times(1.0 / corners.size());
  }

  /** Whether a flat area has a part within all halves (Sutherland and Hodgman). */
  private static boolean reaches(List<Space> area, List<Half> halves) {
    List<Space> rest = area;
    for (Half half : halves) {
      rest = behind(rest, half);
    }
    return !rest.isEmpty();
  }

  private static List<Space> behind(List<Space> area, Half half) {
    List<Space> kept = new ArrayList<>();
    for (int at = 0; at < area.size(); at++) {
      Space from = area.get(at);
      Space to = area.get((at + 1) % area.size());
      double here = half.above(from);
      double there = half.above(to);
      if (here <= 0) {
        kept.add(from);
      }
      if (here * there < 0) {
        kept.add(from.plus(to.minus(from).times(here / (here - there))));
      }
    }
    return kept;
  }

  /** Whether a place is inside: by how much of the sphere around it the triangles cover. */
  private boolean holds(Space place) {
    double turns = triangles.stream().mapToDouble(one -> solidAngle(one, place)).sum();
    return turns > 2 * Math.PI;
  }

  /** A. van Oosterom and J. Strackee, IEEE Trans. Biomed. Eng. 30(2), 1983. */
  private static double solidAngle(Triangle one, Space from) {
    Space a = one.a().minus(from);
    Space b = one.b().minus(from);
    Space c = one.c().minus(from);
    double below =
        a.length() * b.length() * c.length()
            + a.dot(b) * c.length()
            + b.dot(c) * a.length()
            + c.dot(a) * b.length();
    return 2 * Math.atan2(a.dot(b.cross(c)), below);
  }

  /**
   * Whether a straight way meets a triangle (T. Möller and B. Trumbore, J. Graphics Tools 2(1),
   * 1997).
   *
   * @param way of length one
   */
  public boolean isMet(Space from, Space way, double reach) {
    return triangles.stream().anyMatch(one -> isMet(one, from, way, reach));
  }

  private static boolean isMet(Triangle one, Space from, Space way, double reach) {
    Space first = one.b().minus(one.a());
    Space second = one.c().minus(one.a());
    Space across = way.cross(second);
    double turn = first.dot(across);
    if (Math.abs(turn) < MILLIMETRE * MILLIMETRE * MILLIMETRE) {
      return false;
    }
    Space offset = from.minus(one.a());
    double u = offset.dot(across) / turn;
    Space up = offset.cross(first);
    double v = way.dot(up) / turn;
    double along = second.dot(up) / turn;
    return u >= 0 && v >= 0 && u + v <= 1 && along > 0 && along < reach;
  }

  /** Whether the smallest boxes around both are apart. */
  public boolean isFarFrom(Mesh other) {
    return apart(Space::x, other) || apart(Space::y, other) || apart(Space::z, other);
  }

  private boolean apart(ToDoubleFunction<Space> axis, Mesh other) {
    return least(axis) > other.most(axis) || other.least(axis) > most(axis);
  }

  private double least(ToDoubleFunction<Space> axis) {
    return corners().mapToDouble(axis).min().orElseThrow();
  }

  private double most(ToDoubleFunction<Space> axis) {
    return corners().mapToDouble(axis).max().orElseThrow();
  }
}
