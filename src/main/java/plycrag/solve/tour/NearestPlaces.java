package plycrag.solve.tour;

import java.util.Arrays;

/** The few nearest of the places offered, nearest first, ties to what was offered earlier. */
final class NearestPlaces {
  private final int[] places;
  private final double[] squares;
  private int size;

  NearestPlaces(int capacity) {
    places = new int[capacity];
    squares = new double[capacity];
  }

  void clear() {
    size = 0;
  }

  /** Keeps a place if it is among the nearest, given its distance squared. */
  void offer(int place, double square) {
    if (size == places.length && square >= squares[size - 1]) {
      return;
    }
    int at = size < places.length ? size++ : size - 1;
    for (; at > 0 && squares[at - 1] > square; at--) {
      squares[at] = squares[at - 1];
      places[at] = places[at - 1];
    }
    squares[at] = square;
    places[at] = place;
  }

  /** Offers all of these to another, which must not hold any of them twice. */
  void offerTo(NearestPlaces other) {
    for (int at = 0; at < size; at++) {
      if (!other.holds(places[at])) {
        other.offer(places[at], squares[at]);
      }
    }
  }

  private boolean holds(int place) {
    for (int at = 0; at < size; at++) {
      if (places[at] == place) {
        return true;
      }
    }
    return false;
  }

  int[] toArray() {
    return Arrays.copyOf(places, size);
  }
}
