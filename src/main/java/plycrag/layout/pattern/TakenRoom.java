package plycrag.layout.pattern;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Distances;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;

/** The room that a thing takes on a facet, to measure from. */
sealed interface TakenRoom {

  /** How far a place is from it, mm; below zero inside it. */
  double from(Point place);

  /** That distance, but zero inside it: for a body it costs far less than how deep a place lies. */
  default double outside(Point place) {
    return Math.max(0, from(place));
  }

  /** The smallest box around it. */
  Envelope box();

  /** All places nearer to it than a distance, and at its corners a little more. */
  List<Polygon> widened(double distance);

  /**
   * An area.
   *
   * @param area in (u, v)
   */
  record Flat(Polygon area) implements TakenRoom {
    @Override
    public double from(Point place) {
      return Distances.from(place, area);
    }

    @Override
    public Envelope box() {
      return area.getEnvelopeInternal();
    }

    @Override
    public List<Polygon> widened(double distance) {
      return Offsets.widened(area, distance);
    }
  }

  /**
   * A body behind the face, measured level with the face from a straight line square to it.
   *
   * @param body in (u, v, w)
   * @param low where the line begins behind the face, mm
   * @param high where it ends, mm
   * @param box the smallest box around the part of the body between those, seen square to the face
   */
  record Deep(Solid body, double low, double high, Envelope box) implements TakenRoom {
    @Override
    public double from(Point place) {
      return body.distance(place, low, high);
    }

    @Override
    public double outside(Point place) {
      return body.outside(place, low, high);
    }

    @Override
    public List<Polygon> widened(double distance) {
      return Offsets.widened(body.view(low, high), distance);
    }
  }

  /**
   * A circle.
   *
   * @param centre its centre
   * @param radius mm
   */
  record Round(Point centre, double radius) implements TakenRoom {
    @Override
    public double from(Point place) {
      return place.distance(centre) - radius;
    }

    @Override
    public Envelope box() {
      Envelope box = centre.getEnvelopeInternal();
      box.expandBy(radius);
      return box;
    }

    @Override
    public List<Polygon> widened(double distance) {
      return List.of(Shapes.circle(centre.getX(), centre.getY(), 2 * (radius + distance)));
    }
  }
}
