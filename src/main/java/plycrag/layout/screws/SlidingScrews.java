package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Tolerance;

/**
 * Slides the screws of a line off the stretches that inserts take: as few screws as keep the
 * greatest spacing, then the least sum of moves from where they would stand evenly.
 *
 * <p>Cost: for each number of screws tried, the screws times the square of the greatest spacing in
 * steps.
 */
final class SlidingScrews {
  /** No two stand nearer than the greatest spacing over this; even ones never do. */
  private static final int CLOSEST = 2;

  private final double first;
  private final double last;
  private final double greatest;
  private final double step;
  private final List<Span> taken;

  /**
   * @param first where a screw may stand, mm
   * @param last the same, mm
   * @param greatest spacing, mm
   * @param step of the marking grid, mm
   * @param taken where none may stand; the ends are free
   */
  SlidingScrews(double first, double last, double greatest, double step, List<Span> taken) {
    this.first = first;
    this.last = last;
    this.greatest = greatest;
    this.step = step;
    this.taken = List.copyOf(taken);
  }

  /** Whether none of some places is taken. */
  boolean areFree(List<Double> places) {
    return places.stream().allMatch(this::isFree);
  }

  private boolean isFree(double place) {
    return taken.stream()
        .noneMatch(
            span -> Tolerance.isMore(place, span.low()) && Tolerance.isLess(place, span.high()));
  }

  /**
   * The places nearest to even ones; empty if none fit, even with twice as many screws.
   *
   * @param even evenly from first to last, mm
   */
  Optional<List<Double>> nearest(List<Double> even) {
    for (int count = even.size(); count <= 2 * even.size(); count++) {
      Optional<List<Double>> places = count == 1 ? one(even.get(0)) : nearest(count);
      if (places.isPresent()) {
        return places;
      }
    }
    return Optional.empty();
  }

  private Optional<List<Double>> one(double place) {
    for (int off = 0; off * step <= last - first; off++) {
      for (double other : new double[] {place - off * step, place + off * step}) {
        if (Tolerance.atLeast(other, first) && Tolerance.atMost(other, last) && isFree(other)) {
          return Optional.of(List.of(other));
        }
      }
    }
    return Optional.empty();
  }

  private int steps(double length) {
    return (int) Tolerance.wholeDown(length / step);
  }

  private Optional<List<Double>> nearest(int count) {
    int size = steps(last - first) + 1;
    long[][] least = new long[count][size];
    int[][] before = new int[count][size];
    for (long[] row : least) {
      Arrays.fill(row, Long.MAX_VALUE);
    }
    for (int screw = 0; screw < count; screw++) {
      for (int at = 0; at < size; at++) {
        if (isFree(first + at * step) && isWithinReach(screw, at, count, size)) {
          place(screw, at, Math.abs(at - even(screw, count, size)), least, before);
        }
      }
    }
    return read(least[count - 1], before);
  }

  /** The end screws stand no further from the ends of the line than half the greatest spacing. */
  private boolean isWithinReach(int screw, int at, int count, int size) {
    int reach = steps(greatest / 2);
    return (screw > 0 || at <= reach) && (screw < count - 1 || size - 1 - at <= reach);
  }

  private static int even(int screw, int count, int size) {
    return (int) Math.round((size - 1.0) * screw / (count - 1));
  }

  private void place(int screw, int at, long move, long[][] least, int[]... before) {
    if (screw == 0) {
      least[0][at] = move;
      return;
    }
    int closest = Math.max(1, steps(greatest / CLOSEST));
    for (int from = Math.max(0, at - steps(greatest)); from <= at - closest; from++) {
      long sum = least[screw - 1][from];
      if (sum < Long.MAX_VALUE && sum + move < least[screw][at]) {
        least[screw][at] = sum + move;
        before[screw][at] = from;
      }
    }
  }

  private Optional<List<Double>> read(long[] last, int[]... before) {
    int best = 0;
    for (int at = 1; at < last.length; at++) {
      best = last[at] < last[best] ? at : best;
    }
    if (last[best] == Long.MAX_VALUE) {
      return Optional.empty();
    }
    List<Double> places = new ArrayList<>();
    int at = best;
    for (int screw = before.length - 1; screw >= 0; screw--) {
      places.add(0, first + at * step);
      at = before[screw][at];
    }
    return Optional.of(places);
  }
}
