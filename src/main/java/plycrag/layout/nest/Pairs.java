package plycrag.layout.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Which blanks to pair: again and again the two that save most.
 *
 * @param task whose blanks they are
 * @param bundles as they are
 * @param fits whether a bundle goes on a sheet
 */
record Pairs(NestTask task, List<Bundle> bundles, Predicate<Bundle> fits) {
  Pairs {
    bundles = List.copyOf(bundles);
  }

  /** The bundles with one pair, with two and so on, at most so many times. */
  List<Pairs> ofAnyNumber(int most) {
    List<Pairs> all = new ArrayList<>();
    Optional<Pairs> next = withOneMore();
    while (next.isPresent() && all.size() < most) {
      all.add(next.get());
      next = next.get().withOneMore();
    }
    return all;
  }

  private record Candidate(Bundle first, Bundle second, Bundle pair) {
    double saved() {
      return Pairing.area(first) + Pairing.area(second) - Pairing.area(pair);
    }
  }

  private Optional<Pairs> withOneMore() {
    List<Candidate> candidates = new ArrayList<>();
    List<Bundle> odd = bundles.stream().filter(bundle -> Pairing.isOddAlone(task, bundle)).toList();
    for (int at = 0; at < odd.size(); at++) {
      Bundle first = odd.get(at);
      for (Bundle second : odd.subList(at + 1, odd.size())) {
        Pairing.of(task, first, second)
            .filter(fits)
            .ifPresent(pair -> candidates.add(new Candidate(first, second, pair)));
      }
    }
    return candidates.stream().max(Comparator.comparingDouble(Candidate::saved)).map(this::with);
  }

  private Pairs with(Candidate chosen) {
    List<Bundle> changed = new ArrayList<>(bundles);
    changed.remove(chosen.second());
    changed.set(changed.indexOf(chosen.first()), chosen.pair());
    return new Pairs(task, changed, fits);
  }
}
