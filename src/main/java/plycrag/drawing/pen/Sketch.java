package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.sheets.MachinedHole;

/**
 * Collects the shapes of one drawing; lengths on paper are turned into the model's by its scale.
 */
public final class Sketch {
  /** Height of headings and marks on paper, mm. */
  public static final double LARGE = 3.5;

  /** Height of figures and notes on paper, mm; nothing is smaller. */
  public static final double SMALL = 2.5;

  private static final double CROSS = 0.9;
  private static final double HAIR = 0.18;

  private final int scale;
  private final List<Shape> shapes = new ArrayList<>();

  public Sketch(int scale) {
    this.scale = scale;
  }

  public int scale() {
    return scale;
  }

  /** A length on paper in the model's millimetres. */
  public double paper(double millimetres) {
    return millimetres * scale;
  }

  /** The drawing, in which no line lies on another; closed outlines stay whole. */
  public Drawing drawing(String title, Extent extent) {
    return new Drawing(title, scale, extent, DrawnOnce.of(shapes));
  }

  /** The edges of an area, each a line of its own. */
  public void edges(Layer layer, Polygon area, FacetFrame frame) {
    for (LineString edge : Shapes.edges(area)) {
      List<Xy> ends = points(edge, frame);
      line(layer, ends.get(0), ends.get(1));
    }
  }

  /** A straight line; one that is seen end on, or is shorter than any tape reads, is none. */
  public void line(Layer layer, Xy from, Xy to) {
    if (Math.abs(from.x() - to.x()) > Tolerance.TOUCH
        || Math.abs(from.y() - to.y()) > Tolerance.TOUCH) {
      shapes.add(new Shape.Line(layer, from, to));
    }
  }

  /** A closed way, each side a line of its own. */
  public void closed(Layer layer, List<Xy> corners) {
    for (int at = 0; at < corners.size(); at++) {
      line(layer, corners.get(at), corners.get((at + 1) % corners.size()));
    }
  }

  public void path(Layer layer, List<Xy> points) {
    shapes.add(new Shape.Path(layer, points));
  }

  public void outline(Layer layer, List<Xy> vertices) {
    shapes.add(new Shape.Outline(layer, vertices, Fill.NONE));
  }

  public void area(Layer layer, List<Xy> vertices, Fill fill) {
    shapes.add(new Shape.Area(layer, vertices, fill));
  }

  public void circle(Layer layer, Xy centre, double radius) {
    shapes.add(new Shape.Circle(layer, centre, radius, Fill.NONE));
  }

  /** A hole: its circle with a small upright cross. */
  public void hole(Xy centre, double diameter) {
    circle(Layers.HOLES, centre, diameter / 2);
    cross(centre, paper(CROSS));
  }

  /** A hole of a sheet; what widens another at a face has no cross beside that one's. */
  public void hole(MachinedHole hole) {
    Xy centre = new Xy(hole.spot().x(), hole.spot().y());
    switch (hole.kind()) {
      case COUNTERSINK -> circle(Layers.HOLES, centre, hole.bore().diameter() / 2);
      case RECESS -> circle(Layers.FLANGES, centre, hole.bore().diameter() / 2);
      case INSERT, SCREW, PIN -> hole(centre, hole.bore().diameter());
    }
  }

  /** A small upright cross, as an area: who reads a circle by program knows its centre. */
  private void cross(Xy centre, double arm) {
    double half = paper(HAIR) / 2;
    List<Xy> corners = new ArrayList<>();
    corners.add(centre.plus(-arm, -half));
    corners.add(centre.plus(-half, -half));
    corners.add(centre.plus(-half, -arm));
    corners.add(centre.plus(half, -arm));
    corners.add(centre.plus(half, -half));
    corners.add(centre.plus(arm, -half));
    corners.add(centre.plus(arm, half));
    corners.add(centre.plus(half, half));
    corners.add(centre.plus(half, arm));
    corners.add(centre.plus(-half, arm));
    corners.add(centre.plus(-half, half));
    corners.add(centre.plus(-arm, half));
    area(Layers.TINT, corners, Fill.INK);
  }

  /** A screw: a short cross at 45°. */
  public void screw(Xy centre) {
    double arm = paper(CROSS) * 0.7;
    line(Layers.SCREWS, centre.plus(-arm, -arm), centre.plus(arm, arm));
    line(Layers.SCREWS, centre.plus(-arm, arm), centre.plus(arm, -arm));
  }

  /** A small square on a corner: where a screw may go. */
  public void screwPoint(Xy centre) {
    double arm = paper(CROSS) * 0.7;
    outline(
        Layers.SCREW_POINTS,
        List.of(
            centre.plus(-arm, 0), centre.plus(0, -arm), centre.plus(arm, 0), centre.plus(0, arm)));
  }

  public void label(Layer layer, Xy at, String text, double height, TextAnchor anchor) {
    label(new Shape.Label(layer, at, text, height, anchor, 0));
  }

  public void label(Shape.Label label) {
    shapes.add(label);
  }

  /** A label that reads from the right. */
  public void labelUp(Layer layer, Xy at, String text, double height, TextAnchor anchor) {
    shapes.add(new Shape.Label(layer, at, text, height, anchor, 90));
  }

  /** A small label centred on a place and turned, degrees counter-clockwise. */
  public void labelTurned(Layer layer, Xy at, String text, double angle) {
    shapes.add(new Shape.Label(layer, at, text, SMALL, TextAnchor.MIDDLE, angle));
  }

  /** The vertices of an area's edge, the first not repeated. */
  public static List<Xy> vertices(LineString ring, FacetFrame frame) {
    List<Xy> points = points(ring, frame);
    return points.subList(0, points.size() - 1);
  }

  /** The points of a line. */
  public static List<Xy> points(LineString line, FacetFrame frame) {
    List<Xy> points = new ArrayList<>();
    for (Coordinate point : line.getCoordinates()) {
      points.add(frame.at(point.x, point.y));
    }
    return points;
  }
}
