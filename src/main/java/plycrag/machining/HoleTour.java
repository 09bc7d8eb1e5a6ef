package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Xy;
import plycrag.solve.tour.Metric;
import plycrag.solve.tour.Places;
import plycrag.solve.tour.TourSearch;

/**
 * The order in which one tool visits its holes: a short way from the sheet's lower left corner
 * through every hole once, ending at any of them. See {@link TourSearch}.
 */
final class HoleTour {
  private static final Xy CORNER = new Xy(0, 0);

  private HoleTour() {}

  /** The holes in the order of the way. */
  static List<Xy> of(List<Xy> holes, Metric metric) {
    List<Xy> all = new ArrayList<>();
    all.add(CORNER);
    all.addAll(holes);
    Places places =
        Places.open(all.stream().map(hole -> new Coordinate(hole.x(), hole.y())).toList(), metric);
    List<Xy> way = new ArrayList<>();
    for (int place : fromCorner(TourSearch.order(places), places.end())) {
      way.add(all.get(place));
    }
    return List.copyOf(way);
  }

  /** The order without corner and end, which lie side by side, read from the corner. */
  private static List<Integer> fromCorner(int[] order, int end) {
    List<Integer> way = new ArrayList<>();
    boolean endFirst = order[1] == end;
    for (int at = 1; at < order.length; at++) {
      int place = order[endFirst ? order.length - at : at];
      if (place != end) {
        way.add(place);
      }
    }
    return way;
  }
}
