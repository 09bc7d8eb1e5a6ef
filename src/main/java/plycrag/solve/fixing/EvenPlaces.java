package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;

/** Places on a line, evenly apart on the marking grid. */
final class EvenPlaces {
  /** How many more than the fewest are tried so that none lies further from the next than asked. */
  private static final int MORE = 4;

  private final double first;
  private final double last;
  private final double greatest;
  private final Tape tape;

  /**
   * @param first the least, mm
   * @param last the greatest, mm
   * @param greatest distance between two, mm
   * @param tape on whose marking grid they lie
   */
  EvenPlaces(double first, double last, double greatest, Tape tape) {
    this.first = first;
    this.last = last;
    this.greatest = greatest;
    this.tape = tape;
  }

  /**
   * The fewest places, two at least, each moved to the nearest that nothing takes. Where that
   * cannot be they stay evenly apart.
   */
  List<Double> clearOf(List<Span> taken) {
    int gaps = Math.max(1, (int) Tolerance.wholeUp((last - first) / greatest));
    for (int more = 0; more <= MORE; more++) {
      List<Double> moved = new ArrayList<>();
      for (double place : even(gaps + more)) {
        nearest(place, taken).ifPresent(moved::add);
      }
      if (moved.size() == gaps + more + 1 && isApart(moved)) {
        return moved;
      }
    }
    return even(gaps);
  }

  private List<Double> even(int gaps) {
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < gaps; at++) {
      places.add(tape.snap(first + (last - first) * at / gaps));
    }
    places.add(last);
    return places;
  }

  private OptionalDouble nearest(double place, List<Span> taken) {
    double grid = tape.unit().markingGrid();
    int steps = (int) Math.floor(greatest / grid);
    for (int step = 0; step <= steps; step++) {
      for (double moved : new double[] {place - step * grid, place + step * grid}) {
        boolean within = Tolerance.atLeast(moved, first) && Tolerance.atMost(moved, last);
        if (within && isFree(moved, taken)) {
          return OptionalDouble.of(moved);
        }
      }
    }
    return OptionalDouble.empty();
  }

  private static boolean isFree(double place, List<Span> taken) {
    return taken.stream()
        .allMatch(
            span -> Tolerance.atMost(place, span.low()) || Tolerance.atLeast(place, span.high()));
  }

  private boolean isApart(List<Double> places) {
    for (int at = 1; at < places.size(); at++) {
      double gap = places.get(at) - places.get(at - 1);
      if (!Tolerance.isSome(gap) || Tolerance.isMore(gap, greatest)) {
        return false;
      }
    }
    return true;
  }
}
