package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.geometry.Strokes;

/**
 * Leaves of every straight line only what no other line has drawn. Closed outlines come first,
 * since they must stay whole; then the others in their order. An outline that lies on an earlier
 * one is drawn by what is left of its edges.
 */
final class DrawnOnce {
  private final Strokes strokes = new Strokes();

  private DrawnOnce() {}

  /** The shapes in their order. */
  static List<Shape> of(List<Shape> shapes) {
    DrawnOnce once = new DrawnOnce();
    List<List<Shape>> parts = new ArrayList<>();
    for (Shape shape : shapes) {
      parts.add(shape instanceof Shape.Outline outline ? once.outline(outline) : List.of(shape));
    }
    List<Shape> drawn = new ArrayList<>();
    for (int at = 0; at < shapes.size(); at++) {
      boolean done = shapes.get(at) instanceof Shape.Outline;
      drawn.addAll(done ? parts.get(at) : once.straight(shapes.get(at)));
    }
    return drawn;
  }

  private List<Shape> outline(Shape.Outline outline) {
    List<Xy> ring = new ArrayList<>(outline.vertices());
    ring.add(ring.get(0));
    return chain(outline, ring);
  }

  private List<Shape> straight(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return chain(line, List.of(line.from(), line.to()));
    }
    return shape instanceof Shape.Path path ? chain(closed(path), path.points()) : List.of(shape);
  }

  /** Readers take a path that ends where it begins for an outline that was left open. */
  private static Shape closed(Shape.Path path) {
    List<Xy> points = path.points();
    int last = points.size() - 1;
    return last > 2 && points.get(0).equals(points.get(last))
        ? new Shape.Outline(path.layer(), points.subList(0, last), Fill.NONE)
        : path;
  }

  private List<Shape> chain(Shape shape, List<Xy> points) {
    List<Shape> fresh = new ArrayList<>();
    boolean untouched = true;
    for (int next = 1; next < points.size(); next++) {
      LineSegment stroke = segment(points.get(next - 1), points.get(next));
      List<LineSegment> rest = strokes.add(stroke);
      untouched &= rest.size() == 1 && rest.get(0).equals(stroke);
      rest.forEach(part -> fresh.add(line(shape.layer(), part)));
    }
    return untouched ? List.of(shape) : fresh;
  }

  private static LineSegment segment(Xy from, Xy to) {
    return new LineSegment(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()));
  }

  private static Shape line(Layer layer, LineSegment part) {
    return new Shape.Line(layer, new Xy(part.p0.x, part.p0.y), new Xy(part.p1.x, part.p1.y));
  }
}
