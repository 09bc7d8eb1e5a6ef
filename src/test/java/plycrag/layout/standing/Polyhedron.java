package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;

/**
 * A convex body by its corners, faces and edges; the tests' own reckoning, which shares no code
 * with the program's.
 */
record Polyhedron(List<double[]> corners, List<double[]> faces, List<double[]> edges) {
  private static final double SMALL = 1e-6;

  /** Bodies further apart are measured no further, mm. */
  private static final double FAR = 10;

  static Polyhedron of(Solid solid) {
    List<double[]> near = solid.near().stream().map(Polyhedron::vector).toList();
    List<double[]> far = solid.far().stream().map(Polyhedron::vector).toList();
    List<double[]> corners = new ArrayList<>(near);
    corners.addAll(far);
    List<double[]> faces = new ArrayList<>();
    List<double[]> edges = new ArrayList<>();
    addFace(near, faces);
    addFace(far, faces);
    for (int at = 0; at < near.size(); at++) {
      int next = (at + 1) % near.size();
      addFace(List.of(near.get(at), near.get(next), far.get(next), far.get(at)), faces);
      addEdge(near.get(at), near.get(next), edges);
      addEdge(far.get(at), far.get(next), edges);
      addEdge(near.get(at), far.get(at), edges);
    }
    return new Polyhedron(corners, faces, edges);
  }

  static double[] vector(Vector3 place) {
    return new double[] {place.x(), place.y(), place.z()};
  }

  /** Newell's way to the normal of a face. */
  private static void addFace(List<double[]> ring, List<double[]> faces) {
    double[] sum = new double[3];
    for (int at = 0; at < ring.size(); at++) {
      double[] product = cross(ring.get(at), ring.get((at + 1) % ring.size()));
      for (int axis = 0; axis < 3; axis++) {
        sum[axis] += product[axis];
      }
    }
    addUnit(sum, faces);
  }

  private static void addEdge(double[] from, double[] to, List<double[]> edges) {
    addUnit(minus(to, from), edges);
  }

  private static void addUnit(double[] way, List<double[]> ways) {
    double length = Math.sqrt(dot(way, way));
    if (length > SMALL) {
      double[] unit = {way[0] / length, way[1] / length, way[2] / length};
      if (ways.stream().noneMatch(one -> 1 - Math.abs(dot(one, unit)) < 1e-12)) {
        ways.add(unit);
      }
    }
  }

  private static double[] cross(double[] one, double[] other) {
    return new double[] {
      one[1] * other[2] - one[2] * other[1],
      one[2] * other[0] - one[0] * other[2],
      one[0] * other[1] - one[1] * other[0]
    };
  }

  private static double[] minus(double[] one, double[] other) {
    return new double[] {one[0] - other[0], one[1] - other[1], one[2] - other[2]};
  }

  static double dot(double[] one, double[] other) {
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
  }

  private double low(double[] axis) {
    return corners.stream().mapToDouble(corner -> dot(corner, axis)).min().orElseThrow();
  }

  private double high(double[] axis) {
    return corners.stream().mapToDouble(corner -> dot(corner, axis)).max().orElseThrow();
  }

  /** How far a place lies outside, mm; below zero within. No more than the true distance. */
  double outside(double[] place) {
    return faces.stream()
        .mapToDouble(face -> Math.max(dot(place, face) - high(face), low(face) - dot(place, face)))
        .max()
        .orElseThrow();
  }

  private List<double[]> axes(Polyhedron other) {
    List<double[]> axes = new ArrayList<>(faces);
    other.faces.forEach(face -> addUnit(face, axes));
    for (double[] one : edges) {
      for (double[] two : other.edges) {
        addUnit(cross(one, two), axes);
      }
    }
    return axes;
  }

  /** How deep both lie in each other, mm; below zero they are apart. */
  double depth(Polyhedron other) {
    double least = Double.POSITIVE_INFINITY;
    for (double[] axis : axes(other)) {
      least = Math.min(least, Math.min(high(axis) - other.low(axis), other.high(axis) - low(axis)));
      if (least < -FAR) {
        return least;
      }
    }
    return least;
  }

  /**
   * Whether this body, moved straight on as far as can be, runs into another by more than a slack:
   * along each axis it does so for a stretch of the way, and altogether where the stretches share
   * something.
   */
  boolean runsInto(Polyhedron other, double[] way, double slack) {
    double from = 0;
    double to = 1e6;
    for (double[] axis : axes(other)) {
      double speed = dot(way, axis);
      double enter = other.low(axis) + slack - high(axis);
      double leave = other.high(axis) - slack - low(axis);
      if (Math.abs(speed) < 1e-9) {
        if (enter > 0 || leave < 0) {
          return false;
        }
        continue;
      }
      from = Math.max(from, Math.min(enter / speed, leave / speed));
      to = Math.min(to, Math.max(enter / speed, leave / speed));
      if (from >= to) {
        return false;
      }
    }
    return true;
  }
}
