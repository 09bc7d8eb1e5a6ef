package plycrag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What overlays of upright rectangles come to, by comparing their sides: the same as an overlay on
 * the grid would give, at a small part of the cost. Where something else is asked for, there is no
 * answer.
 */
final class Rectangles {
  private Rectangles() {}

  /** A stretch along one axis, mm. */
  private record Stretch(double low, double high) {}

  /** The box of a geometry that is one upright rectangle. */
  private static Optional<Envelope> box(Geometry geometry) {
    return geometry.getNumGeometries() == 1 && geometry.getGeometryN(0).isRectangle()
        ? Optional.of(geometry.getEnvelopeInternal())
        : Optional.empty();
  }

  /** What two rectangles share, one area or none; or one of them that lies in a convex area. */
  static Optional<List<Polygon>> shared(Polygon one, Polygon other) {
    if (one.isRectangle() && other.isRectangle()) {
      Envelope both = one.getEnvelopeInternal().intersection(other.getEnvelopeInternal());
      return Optional.of(both.getArea() > 0 ? List.of(Shapes.rectangle(both)) : List.of());
    }
    if (other.isRectangle()) {
      return shared(other, one);
    }
    boolean isInside = one.isRectangle() && Hulls.isConvex(other) && hasCorners(other, one);
    return isInside
        ? Optional.of(List.of(Shapes.rectangle(one.getEnvelopeInternal())))
        : Optional.empty();
  }

  private static boolean hasCorners(Polygon area, Polygon of) {
    return Stream.of(of.getCoordinates())
        .allMatch(corner -> Distances.covers(corner, area.getExteriorRing()));
  }

  /** What others that go right across a rectangle, all the same way, leave of it; in order. */
  static Optional<List<Polygon>> without(Geometry whole, List<Polygon> others) {
    Optional<Envelope> box = box(whole);
    if (box.isEmpty()) {
      return Optional.empty();
    }
    List<Envelope> taken = new ArrayList<>();
    for (Polygon other : others) {
      Envelope both = box.get().intersection(other.getEnvelopeInternal());
      if (both.getArea() > 0 && !other.isRectangle()) {
        return Optional.empty();
      }
      if (both.getArea() > 0) {
        taken.add(both);
      }
    }
    return without(box.get(), taken.stream());
  }

  private static Optional<List<Polygon>> without(Envelope box, Stream<Envelope> others) {
    List<Envelope> taken = others.toList();
    if (taken.stream().allMatch(one -> one.getHeight() == box.getHeight())) {
      return Optional.of(
          free(stretches(taken, Envelope::getMinX, Envelope::getMaxX), box.getMinX(), box.getMaxX())
              .map(gap -> Shapes.rectangle(gap.low, box.getMinY(), gap.high, box.getMaxY()))
              .toList());
    }
    if (taken.stream().allMatch(one -> one.getWidth() == box.getWidth())) {
      return Optional.of(
          free(stretches(taken, Envelope::getMinY, Envelope::getMaxY), box.getMinY(), box.getMaxY())
              .map(gap -> Shapes.rectangle(box.getMinX(), gap.low, box.getMaxX(), gap.high))
              .toList());
    }
    return Optional.empty();
  }

  private static List<Stretch> stretches(
      List<Envelope> boxes, ToDoubleFunction<Envelope> low, ToDoubleFunction<Envelope> high) {
    return boxes.stream()
        .map(box -> new Stretch(low.applyAsDouble(box), high.applyAsDouble(box)))
        .sorted(Comparator.comparingDouble(Stretch::low))
        .toList();
  }

  /** What stretches, ascending, leave between two places. */
  private static Stream<Stretch> free(List<Stretch> taken, double from, double to) {
    List<Stretch> free = new ArrayList<>();
    double at = from;
    for (Stretch stretch : taken) {
      free.add(new Stretch(at, stretch.low));
      at = Math.max(at, stretch.high);
    }
    free.add(new Stretch(at, to));
    return free.stream().filter(stretch -> stretch.low < stretch.high);
  }
}
