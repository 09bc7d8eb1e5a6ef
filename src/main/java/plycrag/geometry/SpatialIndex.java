package plycrag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * A packed R-tree that answers in the order in which its items were given, so that nothing that
 * depends on it depends on the tree.
 *
 * @param <T> what it holds
 */
public final class SpatialIndex<T> {
  private final STRtree tree = new STRtree();

  private record Entry<T>(int number, T item) {}

  /** An index over items, each with its box. */
  public SpatialIndex(List<T> items, Function<T, Envelope> box) {
    for (int number = 0; number < items.size(); number++) {
      tree.insert(box.apply(items.get(number)), new Entry<>(number, items.get(number)));
    }
    tree.build();
  }

  /** The items whose boxes come within a reach of the box, mm. */
  public List<T> near(Envelope box, double reach) {
    Envelope wider = new Envelope(box);
    wider.expandBy(reach);
    List<Entry<T>> found = new ArrayList<>();
    tree.query(wider, item -> found.add(entry(item)));
    found.sort(Comparator.comparingInt(Entry::number));
    return found.stream().map(Entry::item).toList();
  }

  @SuppressWarnings("unchecked") // nothing else was put in
  private Entry<T> entry(Object item) {
    return (Entry<T>) item;
  }
}
