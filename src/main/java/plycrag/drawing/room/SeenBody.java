package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * A part as a viewer sees it.
 *
 * @param mark its name
 * @param sheet whether it is of plywood
 * @param solid its corners in the room, openings left out
 * @param edges on the drawing, those of faces that are seen
 * @param silhouette what it covers on the drawing
 * @param faces those that are seen
 */
record SeenBody(
    String mark,
    boolean sheet,
    Solid solid,
    List<LineString> edges,
    Geometry silhouette,
    List<Face> faces) {
  /** A face of less area on the drawing is seen from its edge, mm². */
  private static final double EDGE_ON = 1;

  /**
   * A face that is seen.
   *
   * @param area on the drawing
   * @param way square to it, out of the body, its length without meaning
   */
  record Face(Polygon area, Vector3 way) {}

  /**
   * Sees a body.
   *
   * @param openings on the drawing, through the whole of it
   */
  static SeenBody of(
      String mark, boolean sheet, Solid solid, List<Polygon> openings, Axonometry view) {
    List<Face> faces = new ArrayList<>();
    List<LineString> edges = new ArrayList<>();
    for (List<Vector3> face : solid.faces().toList()) {
      List<Coordinate> corners = face.stream().map(view::project).toList();
      Vector3 way = normal(face, solid);
      if (way.dot(view.toViewer()) > 0 && area(corners) > EDGE_ON) {
        Polygon area = Shapes.polygon(corners);
        faces.add(new Face(area, way));
        edges.addAll(Shapes.edges(area));
      }
    }
    Geometry silhouette = Shapes.together(faces.stream().map(Face::area).toList());
    for (Polygon opening : openings) {
      silhouette = Shapes.without(silhouette, opening);
      edges.addAll(Shapes.edges(opening));
    }
    return new SeenBody(mark, sheet, solid, List.copyOf(edges), silhouette, List.copyOf(faces));
  }

  private static double area(List<Coordinate> corners) {
    double twice = 0;
    for (int at = 0; at < corners.size(); at++) {
      Coordinate next = corners.get((at + 1) % corners.size());
      twice += corners.get(at).x * next.y - next.x * corners.get(at).y;
    }
    return Math.abs(twice) / 2;
  }

  /** Square to a face, away from the body, its length without meaning. */
  private static Vector3 normal(List<Vector3> face, Solid solid) {
    Vector3 normal = Solid.normal(face);
    Vector3 outward = middle(face).minus(middle(corners(solid).toList()));
    return outward.dot(normal) < 0 ? new Vector3(-normal.x(), -normal.y(), -normal.z()) : normal;
  }

  private static Stream<Vector3> corners(Solid solid) {
    return Stream.concat(solid.near().stream(), solid.far().stream());
  }

  private static Vector3 middle(List<Vector3> places) {
    Vector3 sum = places.stream().reduce(new Vector3(0, 0, 0), Vector3::plus);
    double count = places.size();
    return new Vector3(sum.x() / count, sum.y() / count, sum.z() / count);
  }

  /**
   * Whether it may hide some of another: not if a plane square to a face of either has the other on
   * the viewer's side.
   */
  boolean mayHide(SeenBody other, Vector3 toViewer) {
    if (!silhouette.getEnvelopeInternal().intersects(other.silhouette.getEnvelopeInternal())) {
      return false;
    }
    boolean apart = false;
    for (Vector3 way : Stream.concat(ways(), other.ways()).toList()) {
      double facing = way.dot(toViewer);
      Vector3 toward = facing < 0 ? new Vector3(-way.x(), -way.y(), -way.z()) : way;
      boolean behind = highest(toward) <= other.lowest(toward) + Tolerance.TOUCH;
      boolean before = other.highest(toward) <= lowest(toward) + Tolerance.TOUCH;
      if (behind || (before && Math.abs(facing) < Tolerance.PARALLEL)) {
        return false;
      }
      apart |= before;
    }
    return apart || depth(toViewer) > other.depth(toViewer);
  }

  /** What no other body hides of it, on the drawing. */
  Geometry open(List<SeenBody> others, Vector3 toViewer) {
    Geometry open = silhouette;
    for (SeenBody other : others) {
      if (!other.equals(this) && other.mayHide(this, toViewer)) {
        open = Shapes.without(open, other.silhouette);
      }
    }
    return open;
  }

  /** The ways square to its faces, of length one. */
  private Stream<Vector3> ways() {
    return solid
        .faces()
        .map(face -> normal(face, solid))
        .filter(normal -> Tolerance.isSome(normal.length()))
        .map(
            normal ->
                new Vector3(
                    normal.x() / normal.length(),
                    normal.y() / normal.length(),
                    normal.z() / normal.length()));
  }

  private double highest(Vector3 way) {
    return corners(solid).mapToDouble(way::dot).max().orElseThrow();
  }

  private double lowest(Vector3 way) {
    return corners(solid).mapToDouble(way::dot).min().orElseThrow();
  }

  double depth(Vector3 toViewer) {
    return middle(corners(solid).toList()).dot(toViewer);
  }
}
