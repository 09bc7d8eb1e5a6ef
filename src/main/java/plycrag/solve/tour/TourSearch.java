package plycrag.solve.tour;

import plycrag.geometry.Tolerance;

/**
 * Looks for a short closed tour.
 *
 * <ol>
 *   <li>Nearest neighbour from the first place.
 *   <li>{@link Improvement} around every place.
 *   <li>A {@link Kick} somewhere and improvement around it, taken back if the tour became longer;
 *       so many times as the places ask for.
 * </ol>
 *
 * <p>Bounded by the number of kicks, and only adds, multiplies, divides and takes square roots: the
 * same places give the same tour on any machine. The tour is never longer than nearest neighbour's.
 */
public final class TourSearch {
  /** Twice as many shorten published instances by less than a thousandth on average. */
  private static final int KICKS_A_PLACE = 20;

  /** About a second for thousands of places. */
  private static final int MOST_KICKS = 8_000;

  /** With fewer, improvement alone finds the shortest or the order makes no difference. */
  private static final int FEWEST_FOR_KICKS = 5;

  private static final int FEWEST_WITH_A_CHOICE = 4;

  private final ArrayTour tour;
  private final Improvement improvement;
  private final Kick kick;

  private TourSearch(Places places) {
    Worklist worklist = new Worklist(places.size());
    tour = new ArrayTour(places.nearestNeighbour());
    improvement = new Improvement(places, tour, worklist);
    kick = new Kick(places, tour, worklist);
    for (int place : tour.from(0)) {
      worklist.add(place);
    }
  }

  /** The numbers of the places in the order of the tour, from the first place. */
  public static int[] order(Places places) {
    if (places.size() < FEWEST_WITH_A_CHOICE) {
      return places.nearestNeighbour();
    }
    TourSearch search = new TourSearch(places);
    search.run();
    return search.tour.from(0);
  }

  private void run() {
    improvement.run();
    if (tour.size() < FEWEST_FOR_KICKS) {
      return;
    }
    int kicks = Math.min(MOST_KICKS, KICKS_A_PLACE * tour.size());
    for (int at = 0; at < kicks; at++) {
      tour.settle();
      double longer = kick.run() - improvement.run();
      if (Tolerance.isSome(longer)) { // a tour as long as before may lead on
        tour.undo(0);
      }
    }
  }
}
