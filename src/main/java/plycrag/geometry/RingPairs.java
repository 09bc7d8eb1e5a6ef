package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Finds which opening of one outline goes on in which of another. */
final class RingPairs {
  private RingPairs() {}

  /** Two rings that belong together, as areas without openings that keep the order of corners. */
  record Pair(Polygon near, Polygon far) {}

  /** The outer edges and the openings in pairs; empty where an opening is in one outline alone. */
  static Optional<List<Pair>> of(Polygon near, Polygon far) {
    List<Polygon> left = new ArrayList<>(Shapes.openings(far));
    List<Pair> pairs = new ArrayList<>();
    pairs.add(new Pair(near, far));
    for (Polygon opening : Shapes.openings(near)) {
      Optional<Polygon> same = left.stream().filter(opening::intersects).findFirst();
      same.ifPresent(
          other -> {
            left.remove(other);
            pairs.add(new Pair(opening, other));
          });
    }
    boolean all = left.isEmpty() && pairs.size() == near.getNumInteriorRing() + 1;
    return all ? Optional.of(List.copyOf(pairs)) : Optional.empty();
  }
}
