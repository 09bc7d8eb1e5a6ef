package plycrag.solve.tour;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Xy;

/** {@link TourSearch}, for tours that come back and ways that are rounded. */
public final class ClosedTour {
  private ClosedTour() {}

  /** The numbers of the places in the order of a short tour. */
  public static int[] of(List<Xy> places, DoubleUnaryOperator rounding) {
    Metric rounded =
        (fromX, fromY, toX, toY) ->
            rounding.applyAsDouble(Metric.STRAIGHT.length(fromX, fromY, toX, toY));
    return TourSearch.order(
        Places.closed(
            places.stream().map(place -> new Coordinate(place.x(), place.y())).toList(), rounded));
  }
}
