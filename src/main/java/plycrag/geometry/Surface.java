package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Polygon;

/**
 * The closed surface of a body as triangles: each of their edges is one of another triangle too,
 * which runs along it the other way; where an opening touches an outline in a corner alone, edges
 * may meet there without that, but leave no gap.
 *
 * @param triangles all in one sense, seen from outside; some may have no area
 */
public record Surface(List<Triangle> triangles) {
  /** Three corners in order. */
  public record Triangle(Vector3 a, Vector3 b, Vector3 c) {
    private Triangle turned() {
      return new Triangle(a, c, b);
    }

    private Triangle mapped(UnaryOperator<Vector3> axes) {
      return new Triangle(axes.apply(a), axes.apply(b), axes.apply(c));
    }
  }

  /** Copies the triangles. */
  public Surface {
    triangles = List.copyOf(triangles);
  }

  /** That of a convex body. */
  public static Surface of(Solid solid) {
    List<Triangle> triangles = new ArrayList<>(fan(solid.near()));
    fan(solid.far()).forEach(one -> triangles.add(one.turned()));
    triangles.addAll(band(solid));
    return new Surface(triangles);
  }

  /**
   * That of a body by its outlines one after the other, as a turned part or a bent strip has them.
   *
   * @param rings with as many corners each, in the same order round; the first and the last one are
   *     flat and seen whole from their first corner
   */
  public static Surface through(List<List<Vector3>> rings) {
    List<Triangle> triangles = new ArrayList<>(fan(rings.get(0)));
    fan(rings.get(rings.size() - 1)).forEach(one -> triangles.add(one.turned()));
    for (int at = 1; at < rings.size(); at++) {
      triangles.addAll(band(new Solid(rings.get(at - 1), rings.get(at))));
    }
    return new Surface(triangles);
  }

  /**
   * That of a body between two outlines on parallel planes, as (u, v, w), openings in them taken
   * out. Their corners need not match. Where an opening in one has none that meets it in the other,
   * as where a slanting edge runs out through it, the body goes straight on from each outline to
   * the middle between them.
   *
   * @param near the outline at {@code from}, ordered as {@link Shapes#areas} has it
   * @param from mm behind the face
   * @param far the outline at {@code to}, likewise
   * @param to mm behind the face, more than {@code from}
   */
  public static Surface between(Polygon near, double from, Polygon far, double to) {
    return RingPairs.of(near, far)
        .map(rings -> joined(near, from, far, to, rings))
        .orElseGet(
            () -> {
              double middle = (from + to) / 2;
              List<Triangle> steps = new ArrayList<>(straight(near, from, middle).triangles);
              steps.addAll(straight(far, middle, to).triangles);
              return new Surface(steps);
            });
  }

  private static Surface straight(Polygon outline, double from, double to) {
    return between(outline, from, outline, to);
  }

  private static Surface joined(
      Polygon near, double from, Polygon far, double to, List<RingPairs.Pair> rings) {
    List<Triangle> triangles = new ArrayList<>(Triangulation.of(near, from));
    Triangulation.of(far, to).forEach(one -> triangles.add(one.turned()));
    rings.forEach(pair -> triangles.addAll(band(Loft.between(pair.near(), from, pair.far(), to))));
    return new Surface(triangles);
  }

  private static List<Triangle> fan(List<Vector3> face) {
    List<Triangle> fan = new ArrayList<>();
    for (int at = 1; at + 1 < face.size(); at++) {
      fan.add(new Triangle(face.get(0), face.get(at), face.get(at + 1)));
    }
    return fan;
  }

  /** What joins two faces, corner for corner. */
  private static List<Triangle> band(Solid solid) {
    List<Triangle> band = new ArrayList<>();
    int corners = solid.near().size();
    for (int at = 0; at < corners; at++) {
      int next = (at + 1) % corners;
      Vector3 near = solid.near().get(at);
      Vector3 far = solid.far().get(next);
      band.add(new Triangle(solid.near().get(next), near, far));
      band.add(new Triangle(near, solid.far().get(at), far));
    }
    return band;
  }

  /** The same in other axes; where they mirror it, its sense turns. */
  public Surface mapped(UnaryOperator<Vector3> axes) {
    return new Surface(triangles.stream().map(one -> one.mapped(axes)).toList());
  }

  /** The same in the other sense. */
  public Surface turned() {
    return new Surface(triangles.stream().map(Triangle::turned).toList());
  }

  /**
   * How much room the body takes, mm³; below zero if its triangles run clockwise, seen from outside
   * in right-handed axes, or counter-clockwise in left-handed ones.
   */
  public double volume() {
    Vector3 from = triangles.isEmpty() ? new Vector3(0, 0, 0) : triangles.get(0).a();
    return triangles.stream()
        .mapToDouble(
            one -> one.a().minus(from).cross(one.b().minus(from)).dot(one.c().minus(from)) / 6)
        .sum();
  }
}
