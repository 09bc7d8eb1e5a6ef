package plycrag.machining.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * A stretch of an outline that is not cut.
 *
 * @param samples along it
 */
record Standing(List<Outline.Sample> samples) {
  /** A stretch is measured to a sample at either end, mm. */
  static final double ROUNDING = 2;

  double length() {
    return samples.stream().mapToDouble(Outline.Sample::length).sum();
  }

  /** The stretches of a closed outline, one that lies over its beginning not split. */
  static List<Standing> of(List<Outline.Sample> ring, Predicate<Outline.Sample> isCut) {
    int first = 0;
    while (first < ring.size() && !isCut.test(ring.get(first))) {
      first++;
    }
    List<Standing> all = new ArrayList<>();
    List<Outline.Sample> stretch = new ArrayList<>();
    for (int step = 0; step < ring.size(); step++) {
      Outline.Sample sample = ring.get((first + step) % ring.size());
      if (!isCut.test(sample)) {
        stretch.add(sample);
      } else if (!stretch.isEmpty()) {
        all.add(new Standing(List.copyOf(stretch)));
        stretch.clear();
      }
    }
    if (!stretch.isEmpty()) {
      all.add(new Standing(List.copyOf(stretch)));
    }
    return all;
  }
}
