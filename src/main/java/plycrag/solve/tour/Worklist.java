package plycrag.solve.tour;

/** The places around which something changed, first come, first served, each at most once. */
final class Worklist {
  private final int[] ring;
  private final boolean[] waiting;
  private int first;
  private int size;

  Worklist(int places) {
    ring = new int[places];
    waiting = new boolean[places];
  }

  boolean isEmpty() {
    return size == 0;
  }

  void add(int place) {
    if (!waiting[place]) {
      waiting[place] = true;
      ring[(first + size) % ring.length] = place;
      size++;
    }
  }

  int take() {
    int place = ring[first];
    first = first + 1 == ring.length ? 0 : first + 1;
    size--;
    waiting[place] = false;
    return place;
  }
}
