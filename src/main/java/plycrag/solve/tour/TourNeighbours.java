package plycrag.solve.tour;

/**
 * The places worth going to from each place, nearest first.
 *
 * <p>The nearest alone would all lie in one cluster of holes and hide the way to the next. So the
 * nearest two of each quadrant are taken along, and of both together the nearest ten. What is near
 * is told by the straight way; what is nearest of those by the tour's own, lifts over clamps
 * counted.
 */
final class TourNeighbours {
  private static final int NEAREST = 8;
  private static final int IN_A_QUADRANT = 2;
  private static final int KEPT = 10;

  private final int[][] lists;

  TourNeighbours(Places places) {
    lists = new int[places.size()][0];
    NearestPlaces nearest = new NearestPlaces(NEAREST);
    NearestPlaces[] quadrants = new NearestPlaces[4];
    for (int quadrant = 0; quadrant < 4; quadrant++) {
      quadrants[quadrant] = new NearestPlaces(IN_A_QUADRANT);
    }
    for (int place = 0; place < places.located(); place++) {
      offerOthers(places, place, nearest, quadrants);
      lists[place] = merged(nearest, quadrants);
      sort(lists[place], place, places);
    }
  }

  /** The neighbours of a place, not to be changed; none of an open way's end. */
  int[] of(int place) {
    return lists[place];
  }

  private static void offerOthers(
      Places places, int from, NearestPlaces nearest, NearestPlaces[] quadrants) {
    for (int to = 0; to < places.located(); to++) {
      double dx = places.x(to) - places.x(from);
      double dy = places.y(to) - places.y(from);
      double square = dx * dx + dy * dy;
      if (to != from) {
        nearest.offer(to, square);
      }
      if (square > 0) {
        quadrants[quadrant(dx, dy)].offer(to, square);
      }
    }
  }

  /** By the way from a place; what is as far stays in its order. */
  private static void sort(int[] list, int from, Places places) {
    for (int end = 1; end < list.length; end++) {
      int place = list[end];
      double way = places.distance(from, place);
      int at = end;
      for (; at > 0 && places.distance(from, list[at - 1]) > way; at--) {
        list[at] = list[at - 1];
      }
      list[at] = place;
    }
  }

  /** Each quadrant holds one of the axes that bound it. */
  private static int quadrant(double dx, double dy) {
    if (dx > 0 && dy >= 0) {
      return 0;
    }
    if (dx <= 0 && dy > 0) {
      return 1;
    }
    return dx < 0 ? 2 : 3;
  }

  private static int[] merged(NearestPlaces nearest, NearestPlaces[] quadrants) {
    NearestPlaces kept = new NearestPlaces(KEPT);
    nearest.offerTo(kept);
    nearest.clear();
    for (NearestPlaces quadrant : quadrants) {
      quadrant.offerTo(kept);
      quadrant.clear();
    }
    return kept.toArray();
  }
}
