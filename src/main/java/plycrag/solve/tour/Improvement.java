package plycrag.solve.tour;

import plycrag.geometry.Tolerance;
import plycrag.solve.tour.Exchange.Reversal;
import plycrag.solve.tour.Exchange.RingOpening;

/**
 * Shortens a tour around the places of a worklist until nothing there helps, after S. Lin and B. W.
 * Kernighan, "An effective heuristic algorithm for the traveling-salesman problem", 1973.
 *
 * <ol>
 *   <li>From a place, the way to the next is lost, on either side in turn.
 *   <li>Every exchange that joins a near neighbour and leaves something gained is looked at. If one
 *       shortens the tour, the best is made.
 *   <li>Otherwise the most open are made on trial, and step 2 follows from there.
 *   <li>What led to nothing is taken back.
 * </ol>
 */
final class Improvement {
  private static final int[] BREADTHS = {3, 2, 0};
  private static final int RING_NEIGHBOURS = 5;

  private final Places places;
  private final TourNeighbours neighbours;
  private final ArrayTour tour;
  private final Worklist worklist;
  private final ExchangeChoices[] levels = new ExchangeChoices[BREADTHS.length];
  private int fixed;

  Improvement(Places places, ArrayTour tour, Worklist worklist) {
    this.places = places;
    this.neighbours = new TourNeighbours(places);
    this.tour = tour;
    this.worklist = worklist;
    for (int level = 0; level < levels.length; level++) {
      levels[level] = new ExchangeChoices(BREADTHS[level], Tolerance.RECKONING);
    }
  }

  /** Empties the worklist; by how much the tour became shorter. */
  double run() {
    double gained = 0;
    while (!worklist.isEmpty()) {
      gained += around(worklist.take());
    }
    return gained;
  }

  private double around(int place) {
    double gained = 0;
    int idle = 0;
    while (idle < 2) {
      fixed = place;
      double gain = step(0, places.distance(place, tour.next(place)));
      idle = gain > 0 ? 0 : idle + 1;
      gained += gain;
      tour.turn();
    }
    return gained;
  }

  private double step(int level, double lost) {
    ExchangeChoices choices = levels[level];
    choices.clear();
    collect(choices, lost);
    if (choices.shortens()) {
      choices.best().apply(tour);
      choices.best().note(worklist);
      worklist.add(fixed);
      return choices.gain();
    }
    return onTrial(level, choices);
  }

  private double onTrial(int level, ExchangeChoices choices) {
    for (int at = 0; at < choices.size(); at++) {
      Exchange exchange = choices.get(at);
      int mark = tour.mark();
      exchange.apply(tour);
      double gain = step(level + 1, exchange.open());
      if (gain > 0) {
        exchange.note(worklist);
        return gain;
      }
      tour.undo(mark);
    }
    return 0;
  }

  private void collect(ExchangeChoices choices, double lost) {
    int last = tour.next(fixed);
    for (int joined : neighbours.of(last)) {
      double open = lost - places.distance(last, joined);
      if (open <= Tolerance.RECKONING) {
        return;
      }
      if (joined != fixed) {
        reversal(choices, last, joined, open);
        if (choices == levels[0]) {
          ringOpenings(choices, last, joined, open);
        }
      }
    }
  }

  private void reversal(ExchangeChoices choices, int last, int joined, double left) {
    int end = tour.previous(joined);
    double open = left + places.distance(end, joined);
    double closed = open - places.distance(fixed, end);
    if (end != last && choices.wants(open, closed)) {
      choices.offer(new Reversal(last, joined, end, open), closed);
    }
  }

  private void ringOpenings(ExchangeChoices choices, int last, int joined, double left) {
    int freed = tour.next(joined);
    double lost = left + places.distance(joined, freed);
    int[] near = neighbours.of(freed);
    for (int at = 0; at < near.length && at < RING_NEIGHBOURS; at++) {
      int inside = near[at];
      double open = lost - places.distance(freed, inside);
      if (open <= Tolerance.RECKONING) {
        return;
      }
      if (inside != freed && tour.between(last, inside, joined)) {
        RingOpening ring = new RingOpening(last, joined, freed, inside, inside, open);
        bothSides(choices, ring);
      }
    }
  }

  private void bothSides(ExchangeChoices choices, RingOpening ring) {
    if (ring.inside() != ring.joined()) {
      opening(choices, ring, tour.next(ring.inside()));
    }
    if (ring.inside() != ring.last()) {
      opening(choices, ring, tour.previous(ring.inside()));
    }
  }

  private void opening(ExchangeChoices choices, RingOpening ring, int end) {
    double open = ring.open() + places.distance(ring.inside(), end);
    double closed = open - places.distance(fixed, end);
    if (choices.wants(open, closed)) {
      choices.offer(ring.openedTo(end, open), closed);
    }
  }
}
