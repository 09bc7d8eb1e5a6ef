package plycrag.files.dxf;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import plycrag.document.Shape;
import plycrag.document.Xy;

/**
 * Shapes that lie on each other. A machine would cut them twice, whatever their layers; a shop
 * counts them twice.
 */
final class Coincidence {
  /** Nearer than this readers take two for one, mm: what drawings promise. */
  private static final double COINCIDENT = 0.01;

  /** Side of the cells in which neighbours are looked for, mm; more than that. */
  private static final double CELL = 1;

  private final Map<Cell, List<Shape>> kept = new HashMap<>();

  private Coincidence() {}

  private record Cell(long column, long row) {}

  /** The shapes in their order without those that lie on an earlier one; near linear. */
  static List<Shape> withoutRepeats(List<Shape> shapes) {
    Coincidence seen = new Coincidence();
    return shapes.stream().filter(seen::isNew).toList();
  }

  private boolean isNew(Shape shape) {
    Cell cell = cell(middle(shape));
    for (long column = cell.column() - 1; column <= cell.column() + 1; column++) {
      for (long row = cell.row() - 1; row <= cell.row() + 1; row++) {
        for (Shape earlier : kept.getOrDefault(new Cell(column, row), List.of())) {
          if (coincide(earlier, shape)) {
            return false;
          }
        }
      }
    }
    kept.computeIfAbsent(cell, unseen -> new ArrayList<>()).add(shape);
    return true;
  }

  private static Cell cell(Xy place) {
    return new Cell((long) Math.floor(place.x() / CELL), (long) Math.floor(place.y() / CELL));
  }

  /** The middle of the smallest box around a shape: shapes that coincide have it in common. */
  private static Xy middle(Shape shape) {
    if (shape instanceof Shape.Circle circle) {
      return circle.centre();
    }
    if (shape instanceof Shape.Label label) {
      return label.at();
    }
    List<Xy> places = shape instanceof Shape.Outline outline ? outline.vertices() : chain(shape);
    DoubleSummaryStatistics x = places.stream().mapToDouble(Xy::x).summaryStatistics();
    DoubleSummaryStatistics y = places.stream().mapToDouble(Xy::y).summaryStatistics();
    return places.isEmpty()
        ? new Xy(0, 0)
        : new Xy((x.getMin() + x.getMax()) / 2, (y.getMin() + y.getMax()) / 2);
  }

  private static boolean coincide(Shape a, Shape b) {
    if (a instanceof Shape.Circle one && b instanceof Shape.Circle other) {
      return near(one.centre(), other.centre())
          && Math.abs(one.radius() - other.radius()) <= COINCIDENT;
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
    return Math.abs(a.x() - b.x()) <= COINCIDENT && Math.abs(a.y() - b.y()) <= COINCIDENT;
  }
}
