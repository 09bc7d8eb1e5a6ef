package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.geometry.Round;

/** Places for single letters beside what is drawn. */
final class LetterSpots {
  /** Directions tried around a place. */
  private static final int AROUND = 24;

  /** Distances tried, each a quarter of a letter farther. */
  private static final int AWAY = 24;

  private final double height;
  private final List<Shape> shapes;
  private final List<Envelope> taken = new ArrayList<>();

  /**
   * Beside shapes.
   *
   * @param height of a letter in the model, mm
   */
  LetterSpots(List<Shape> shapes, double height) {
    this.shapes = List.copyOf(shapes);
    this.height = height;
  }

  /** The nearest free place, or the nearest of all where none is. */
  Xy near(Xy place) {
    for (int away = 0; away < AWAY; away++) {
      Round round = new Round(place.x(), place.y(), height * (1 + away / 4.0));
      for (int part = 0; part < AROUND; part++) {
        Coordinate at = round.at(360.0 * part / AROUND);
        Envelope box = new Envelope(at);
        box.expandBy(0.55 * height, 0.7 * height);
        if (isFree(box)) {
          taken.add(box);
          return new Xy(at.x, at.y);
        }
      }
    }
    return place.plus(height, height);
  }

  private boolean isFree(Envelope box) {
    RectangleLineIntersector lines = new RectangleLineIntersector(box);
    return taken.stream().noneMatch(box::intersects)
        && shapes.stream().noneMatch(shape -> meets(shape, box, lines));
  }

  private static boolean meets(Shape shape, Envelope box, RectangleLineIntersector lines) {
    if (shape instanceof Shape.Circle circle) {
      Envelope around = new Envelope(new Coordinate(circle.centre().x(), circle.centre().y()));
      around.expandBy(circle.radius());
      return around.intersects(box);
    }
    List<Xy> chain = chain(shape);
    for (int at = 1; at < chain.size(); at++) {
      Xy from = chain.get(at - 1);
      Xy to = chain.get(at);
      if (lines.intersects(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()))) {
        return true;
      }
    }
    return false;
  }

  private static List<Xy> chain(Shape shape) {
    if (shape instanceof Shape.Path path) {
      return path.points();
    } else if (shape instanceof Shape.Line line) {
      return List.of(line.from(), line.to());
    } else if (shape instanceof Shape.Outline outline) {
      List<Xy> ring = new ArrayList<>(outline.vertices());
      ring.add(ring.get(0));
      return ring;
    } else if (shape instanceof Shape.Area area) {
      List<Xy> ring = new ArrayList<>(area.vertices());
      ring.add(ring.get(0));
      return ring;
    }
    return List.of();
  }
}
