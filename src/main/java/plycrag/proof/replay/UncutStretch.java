package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * A stretch of an outline that is not cut.
 *
 * @param samples along it
 */
record UncutStretch(List<OutlineRing.Sample> samples) {
  /** A stretch is measured to a sample at either end, mm. */
  static final double ROUNDING = 2;

  double length() {
    return samples.stream().mapToDouble(OutlineRing.Sample::length).sum();
  }

  /** The stretches of a closed outline, one that lies over its beginning not split. */
  static List<UncutStretch> of(List<OutlineRing.Sample> ring, Predicate<OutlineRing.Sample> isCut) {
    int first = 0;
    while (first < ring.size() && !isCut.test(ring.get(first))) {
      first++;
    }
    List<UncutStretch> all = new ArrayList<>();
    List<OutlineRing.Sample> stretch = new ArrayList<>();
    for (int step = 0; step < ring.size(); step++) {
      OutlineRing.Sample sample = ring.get((first + step) % ring.size());
      if (!isCut.test(sample)) {
        stretch.add(sample);
      } else if (!stretch.isEmpty()) {
        all.add(new UncutStretch(List.copyOf(stretch)));
        stretch.clear();
      }
    }
    if (!stretch.isEmpty()) {
      all.add(new UncutStretch(List.copyOf(stretch)));
    }
    return all;
  }
}
