package plycrag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * A packed R-tree that answers in the order in which its items were given, so that nothing that
 * depends on it depends on the tree. Items without a box are near to nothing.
 *
 * @param <T> what it holds
 */
public final class SpatialIndex<T> {
  private final List<T> items;

  /** Holds the items' numbers. */
  private final HPRtree tree = new HPRtree();

  /** An index over items, each with its box. */
  public SpatialIndex(List<T> items, Function<T, Envelope> box) {
    this.items = List.copyOf(items);
    for (int number = 0; number < items.size(); number++) {
      Envelope one = box.apply(items.get(number));
      if (!one.isNull()) {
        tree.insert(one, number);
      }
    }
    tree.build();
  }

  /** Whether no item's box meets the box. */
  public boolean isFree(Envelope box) {
    AtomicBoolean free = new AtomicBoolean(true);
    if (!box.isNull()) {
      tree.query(box, number -> free.set(false));
    }
    return free.get();
  }

  /** The items whose boxes come within a reach of the box, mm. */
  public List<T> near(Envelope box, double reach) {
    Envelope wider = new Envelope(box);
    wider.expandBy(reach);
    IntStream.Builder found = IntStream.builder();
    if (!wider.isNull()) {
      tree.query(wider, number -> found.add((Integer) number));
    }
    int[] numbers = found.build().toArray();
    Arrays.sort(numbers);
    List<T> near = new ArrayList<>(numbers.length);
    for (int number : numbers) {
      near.add(items.get(number));
    }
    return near;
  }
}
