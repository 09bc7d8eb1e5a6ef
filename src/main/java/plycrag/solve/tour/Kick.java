package plycrag.solve.tour;

import java.util.SplittableRandom;

/**
 * Puts three neighbouring short stretches of a tour in the opposite order, each in its own
 * direction: the double bridge of O. Martin, S. W. Otto and E. W. Felten, "Large-step Markov chains
 * for the traveling salesman problem", 1991. Improvement never undoes it in one step.
 */
final class Kick {
  private static final int LONGEST_STRETCH = 50;

  private final Places places;
  private final ArrayTour tour;
  private final Worklist worklist;
  private final SplittableRandom dice = new SplittableRandom(1);

  Kick(Places places, ArrayTour tour, Worklist worklist) {
    this.places = places;
    this.tour = tour;
    this.worklist = worklist;
  }

  /** By how much the tour became longer; the worklist holds the places whose ways changed. */
  double run() {
    int[] ends = ends();
    double before = lengthOf(ends, 0, 1, 2, 3, 4, 5, 6, 7);
    double after = lengthOf(ends, 0, 5, 6, 3, 4, 1, 2, 7);
    tour.reverse(ends[1], ends[6]);
    tour.reverse(ends[6], ends[5]);
    tour.reverse(ends[4], ends[3]);
    tour.reverse(ends[2], ends[1]);
    for (int place : ends) {
      worklist.add(place);
    }
    return after - before;
  }

  /** The place before, first and last of each stretch, and the place after. */
  private int[] ends() {
    int longest = Math.min(LONGEST_STRETCH, (tour.size() - 2) / 3);
    int[] ends = new int[8];
    ends[0] = dice.nextInt(tour.size());
    for (int at = 1; at < 7; at += 2) {
      ends[at] = tour.next(ends[at - 1]);
      ends[at + 1] = tour.after(ends[at], dice.nextInt(longest));
    }
    ends[7] = tour.next(ends[6]);
    return ends;
  }

  private double lengthOf(int[] ends, int... pairs) {
    double length = 0;
    for (int at = 0; at < pairs.length; at += 2) {
      length += places.distance(ends[pairs[at]], ends[pairs[at + 1]]);
    }
    return length;
  }
}
