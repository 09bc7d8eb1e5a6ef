package plycrag.glb;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** A body by its triangles, counter-clockwise from outside; m. */
public record Mesh(List<Triangle> triangles) {
  private static final double MILLIMETRE = 1e-3;

  /** What counts as flat: rounding to micrometres on either side. */
  private static final double FLAT = 0.01 * MILLIMETRE;

  public Mesh {
    triangles = List.copyOf(triangles);
  }

  /** Twice the area that is none, m². */
  private static final double SPECK = 1e-9;

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
   * Whether two bodies, convex or not, share more than a depth: one of the convex parts of this one
   * holds some of the other deeply.
   */
  public boolean shares(Mesh other, double depth) {
    List<Face> faces =
        triangles.stream()
            .filter(one -> one.normal().length() > SPECK)
            .map(one -> new Face(half(one), one.corners()))
            .toList();
    return parts(faces, List.of()).stream().anyMatch(part -> part.holds(other, depth));
  }

  private static Half half(Triangle one) {
    Space outward = one.normal().times(1 / one.normal().length());
    return new Half(outward, outward.dot(one.a()));
  }

  /** A flat part of a surface, with the plane in which it lies. */
  private record Face(Half plane, List<Space> corners) {
    /** What of it lies behind a plane; nothing of what lies in that and faces the other way. */
    Stream<Face> behind(Half half) {
      boolean isInPlane = corners.stream().allMatch(one -> Math.abs(half.above(one)) < 10 * FLAT);
      List<Space> rest = isInPlane ? corners : Mesh.behind(corners, half);
      boolean isOther = isInPlane && plane.outward().dot(half.outward()) < 0;
      return isOther || area(rest) < SPECK ? Stream.of() : Stream.of(new Face(plane, rest));
    }

    private static double area(List<Space> corners) {
      Space sum = new Space(0, 0, 0);
      for (int at = 2; at < corners.size(); at++) {
        sum = sum.plus(new Triangle(corners.get(0), corners.get(at - 1), corners.get(at)).normal());
      }
      return sum.length();
    }

    boolean reaches(double side, Half half) {
      return corners.stream().anyMatch(one -> side * half.above(one) > 10 * FLAT);
    }
  }

  /** A convex part: what lies behind the planes of some faces and of the cuts beside it. */
  private record Part(List<Face> faces, List<Half> cuts) {
    boolean holds(Mesh other, double depth) {
      List<Half> core =
          Stream.concat(faces.stream().map(Face::plane), cuts.stream())
              .map(half -> new Half(half.outward(), half.distance() - depth))
              .toList();
      List<Space> corners = faces.stream().flatMap(face -> face.corners().stream()).toList();
      Space middle =
          corners.stream().reduce(new Space(0, 0, 0), Space::plus).times(1.0 / corners.size());
      return other.triangles.stream().anyMatch(one -> reaches(one.corners(), core))
          || (core.stream().allMatch(half -> half.above(middle) < 0) && other.holds(middle));
    }
  }

  /** Cuts a body along the plane of one of its faces that it reaches beyond, and again. */
  private static List<Part> parts(List<Face> faces, List<Half> cuts) {
    Half cut =
        faces.stream()
            .map(Face::plane)
            .filter(half -> faces.stream().anyMatch(face -> face.reaches(1, half)))
            .min(Comparator.comparing(half -> split(faces, half)))
            .orElse(null);
    if (cut == null) {
      return List.of(new Part(faces, cuts));
    }
    List<Part> parts = new ArrayList<>();
    for (Half half : List.of(cut, new Half(cut.outward().times(-1), -cut.distance()))) {
      List<Half> more = new ArrayList<>(cuts);
      more.add(half);
      parts.addAll(parts(faces.stream().flatMap(face -> face.behind(half)).toList(), more));
    }
    return parts;
  }

  /** How many faces a plane cuts through. */
  private static long split(List<Face> faces, Half half) {
    return faces.stream().filter(face -> face.reaches(1, half) && face.reaches(-1, half)).count();
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
