package plycrag.solve.tour;

import java.util.Arrays;

/**
 * A closed tour in an array, with a journal to take changes back.
 *
 * <p>To turn a stretch around and to turn the rest around give the same tour seen from two sides.
 * So the shorter is turned, and the side from which the array is read changes where need be.
 */
final class ArrayTour {
  private final int[] order;
  private final int[] positions;
  private boolean backward;
  private int[] journal = new int[64];
  private int written;

  /** The tour through places in an order; the array is taken over. */
  ArrayTour(int[] order) {
    this.order = order;
    positions = new int[order.length];
    for (int at = 0; at < order.length; at++) {
      positions[order[at]] = at;
    }
  }

  int size() {
    return order.length;
  }

  int next(int place) {
    return backward ? below(positions[place]) : above(positions[place]);
  }

  int previous(int place) {
    return backward ? above(positions[place]) : below(positions[place]);
  }

  private int above(int position) {
    return order[position + 1 == order.length ? 0 : position + 1];
  }

  private int below(int position) {
    return order[position == 0 ? order.length - 1 : position - 1];
  }

  /** The place so many steps further, fewer than the tour has. */
  int after(int place, int steps) {
    int position = positions[place] + (backward ? order.length - steps : steps);
    return order[position < order.length ? position : position - order.length];
  }

  /** Whether a place lies on the stretch from one place on to another, both included. */
  boolean between(int from, int place, int to) {
    int low = positions[backward ? to : from];
    int high = positions[backward ? from : to];
    int at = positions[place];
    return low <= high ? low <= at && at <= high : low <= at || at <= high;
  }

  /** The order from a place on. */
  int[] from(int place) {
    int[] all = new int[order.length];
    int at = place;
    for (int step = 0; step < all.length; step++) {
      all[step] = at;
      at = next(at);
    }
    return all;
  }

  /** Reads the tour from the other side. */
  void turn() {
    backward = !backward;
  }

  /** Turns the stretch from one place on to another around: last comes where first was. */
  void reverse(int first, int last) {
    int low = positions[backward ? last : first];
    int high = positions[backward ? first : last];
    boolean rest = 2 * length(low, high) > order.length;
    if (rest) {
      int above = high + 1 == order.length ? 0 : high + 1;
      high = low == 0 ? order.length - 1 : low - 1;
      low = above;
      turn();
    }
    swap(low, high);
    write(rest ? ~low : low, high);
  }

  private int length(int low, int high) {
    return (high < low ? high + order.length : high) - low + 1;
  }

  private void swap(int low, int high) {
    int from = low;
    int to = high;
    for (int left = length(low, high) % (order.length + 1) / 2; left > 0; left--) {
      int place = order[from];
      put(order[to], from);
      put(place, to);
      from = from + 1 == order.length ? 0 : from + 1;
      to = to == 0 ? order.length - 1 : to - 1;
    }
  }

  private void put(int place, int position) {
    order[position] = place;
    positions[place] = position;
  }

  private void write(int low, int high) {
    if (written + 2 > journal.length) {
      journal = Arrays.copyOf(journal, 2 * journal.length);
    }
    journal[written++] = low;
    journal[written++] = high;
  }

  /** How far the journal reaches now, for {@link #undo}. */
  int mark() {
    return written;
  }

  /** Takes back what was turned since a mark. */
  void undo(int mark) {
    while (written > mark) {
      int high = journal[--written];
      int low = journal[--written];
      if (low < 0) {
        turn();
      }
      swap(low < 0 ? ~low : low, high);
    }
  }

  /** Empties the journal: what was done stays. */
  void settle() {
    written = 0;
  }
}
