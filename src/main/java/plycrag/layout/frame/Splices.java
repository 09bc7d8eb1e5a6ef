package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Tolerance;

/**
 * Where a member longer than is sold is spliced: at a row of blocking where one lies within a
 * length, else where the length ends; each length as long as may be.
 */
final class Splices {
  /** A row nearer than this part of a length is passed over. */
  private static final double LEAST = 0.5;

  private final double longest;
  private final List<Double> rows;
  private final boolean fromAbove;

  /**
   * @param longest that is sold, mm
   * @param rows where rows of blocking let it be spliced, mm
   * @param fromAbove whether the first length is the uppermost
   */
  Splices(double longest, List<Double> rows, boolean fromAbove) {
    this.longest = longest;
    this.rows = List.copyOf(rows);
    this.fromAbove = fromAbove;
  }

  /** The places from below, mm. */
  List<Double> places(Span whole) {
    List<Double> places = new ArrayList<>();
    Span rest = whole;
    while (Tolerance.isMore(rest.size(), longest)) {
      double place = next(rest);
      places.add(place);
      rest = fromAbove ? new Span(rest.low(), place) : new Span(place, rest.high());
    }
    Collections.sort(places);
    return places;
  }

  private double next(Span rest) {
    double furthest = fromAbove ? rest.high() - longest : rest.low() + longest;
    double nearest = fromAbove ? rest.high() - LEAST * longest : rest.low() + LEAST * longest;
    DoubleStream within =
        rows.stream()
            .mapToDouble(Double::doubleValue)
            .filter(row -> row >= Math.min(furthest, nearest))
            .filter(row -> row <= Math.max(furthest, nearest));
    return (fromAbove ? within.min() : within.max()).orElse(furthest);
  }
}
