package plycrag.files.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import plycrag.document.Shape;
import plycrag.document.Xy;

/**
 * Shapes that lie on each other. A machine would cut them twice, whatever their layers; a shop
 * counts them twice.
 */
final class Coincidence {
  /** mm. */
  private static final double TOLERANCE = 0.01;

  private Coincidence() {}

  /** The shapes in their order without those that lie on an earlier one. */
  static List<Shape> withoutRepeats(List<Shape> shapes) {
    List<Shape> kept = new ArrayList<>();
    for (Shape shape : shapes) {
      if (kept.stream().noneMatch(earlier -> coincide(earlier, shape))) {
        kept.add(shape);
      }
    }
    return kept;
  }

  private static boolean coincide(Shape a, Shape b) {
    if (a instanceof Shape.Circle one && b instanceof Shape.Circle other) {
      return near(one.centre(), other.centre())
          && Math.abs(one.radius() - other.radius()) <= TOLERANCE;
    }
    if (a instanceof Shape.Outline one && b instanceof Shape.Outline other) {
      return sameRing(one.vertices(), other.vertices());
    }
    if (a instanceof Shape.Label one && b instanceof Shape.Label other) {
      return near(one.at(), other.at()) && one.text().equals(other.text());
    }
    List<Xy> chain = chain(a);
    return !chain.isEmpty() && sameEitherWay(chain, chain(b));
  }

  private static List<Xy> chain(Shape shape) {
    if (shape instanceof Shape.Line line) {
      return List.of(line.from(), line.to());
    }
    return shape instanceof Shape.Path path ? path.points() : List.of();
  }

  private static boolean sameRing(List<Xy> a, List<Xy> b) {
    int size = b.size();
    return a.size() == size
        && IntStream.range(0, size)
            .anyMatch(
                start ->
                    same(a, i -> b.get((start + i) % size))
                        || same(a, i -> b.get((start - i + size) % size)));
  }

  private static boolean sameEitherWay(List<Xy> a, List<Xy> b) {
    int size = b.size();
    return a.size() == size && (same(a, b::get) || same(a, i -> b.get(size - 1 - i)));
  }

  private static boolean same(List<Xy> places, IntFunction<Xy> others) {
    return IntStream.range(0, places.size()).allMatch(i -> near(places.get(i), others.apply(i)));
  }

  private static boolean near(Xy a, Xy b) {
    return Math.abs(a.x() - b.x()) <= TOLERANCE && Math.abs(a.y() - b.y()) <= TOLERANCE;
  }
}
