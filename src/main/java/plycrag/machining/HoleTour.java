package plycrag.machining;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plycrag.document.Xy;

/**
 * The order in which one tool visits its holes, from the sheet's lower left corner.
 *
 * <ol>
 *   <li>Nearest neighbour, ties to the earlier place.
 *   <li>2-opt: reversing a stretch wherever that shortens the way, until nothing does or the budget
 *       of comparisons is spent. It never lengthens the way, so the result is at most as long as
 *       nearest neighbour's, and it depends on counts alone.
 * </ol>
 */
final class HoleTour {
  private static final int BUDGET = 20_000_000;
  private static final double LEAST_GAIN = 1e-6;
  private static final Xy CORNER = new Xy(0, 0);

  private final List<Xy> places;

  private HoleTour(List<Xy> places) {
    this.places = places;
  }

  /** The places in the order of the tour. */
  static List<Xy> of(List<Xy> places) {
    HoleTour tour = new HoleTour(nearestNeighbour(places));
    tour.improve();
    return List.copyOf(tour.places);
  }

  /** The length of the way from the corner through the places, mm. */
  static double length(List<Xy> places) {
    double length = 0;
    Xy from = CORNER;
    for (Xy place : places) {
      length += distance(from, place);
      from = place;
    }
    return length;
  }

  /** The places, each the nearest one to that before it. */
  static List<Xy> nearestNeighbour(List<Xy> places) {
    List<Xy> left = new ArrayList<>(places);
    List<Xy> tour = new ArrayList<>();
    Xy from = CORNER;
    while (!left.isEmpty()) {
      int nearest = 0;
      for (int at = 1; at < left.size(); at++) {
        if (distance(from, left.get(at)) < distance(from, left.get(nearest))) {
          nearest = at;
        }
      }
      from = left.remove(nearest);
      tour.add(from);
    }
    return tour;
  }

  private void improve() {
    long compared = 0;
    boolean improved = true;
    while (improved && compared < BUDGET) {
      improved = false;
      for (int low = 0; low < places.size() - 1; low++) {
        for (int high = low + 1; high < places.size(); high++) {
          if (gain(low, high) > LEAST_GAIN) {
            Collections.reverse(places.subList(low, high + 1));
            improved = true;
          }
        }
        compared += places.size() - low;
      }
    }
  }

  private double gain(int low, int high) {
    Xy before = low == 0 ? CORNER : places.get(low - 1);
    double now = distance(before, places.get(low));
    double then = distance(before, places.get(high));
    if (high + 1 < places.size()) {
      now += distance(places.get(high), places.get(high + 1));
      then += distance(places.get(low), places.get(high + 1));
    }
    return now - then;
  }

  private static double distance(Xy one, Xy other) {
    double dx = one.x() - other.x();
    double dy = one.y() - other.y();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
