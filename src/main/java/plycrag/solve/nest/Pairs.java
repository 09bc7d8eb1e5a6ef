package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

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
    List<Candidate> candidates = candidates();
    Pairs next = this;
    while (!candidates.isEmpty() && all.size() < most) {
      Candidate best =
          candidates.stream().max(Comparator.comparingDouble(Candidate::saved)).orElseThrow();
      next = next.with(best);
      all.add(next);
      candidates.removeIf(other -> other.sharesWith(best));
    }
    return all;
  }

  private record Candidate(Bundle first, Bundle second, double saved) {
    boolean sharesWith(Candidate other) {
      return Stream.of(first, second)
          .anyMatch(one -> Set.of(other.first, other.second).contains(one));
    }
  }

  /** All that save something; what two shapes save is asked once. */
  private List<Candidate> candidates() {
    List<Bundle> odd = bundles.stream().filter(bundle -> Pairing.isOddAlone(task, bundle)).toList();
    List<List<Coordinate>> shapes = odd.stream().map(this::shape).toList();
    Map<List<List<Coordinate>>, OptionalDouble> known = new HashMap<>();
    List<Candidate> candidates = new ArrayList<>();
    for (int at = 0; at < odd.size(); at++) {
      for (int next = at + 1; next < odd.size(); next++) {
        Bundle first = odd.get(at);
        Bundle second = odd.get(next);
        known
            .computeIfAbsent(
                List.of(shapes.get(at), shapes.get(next)), shape -> saved(first, second))
            .ifPresent(saved -> candidates.add(new Candidate(first, second, saved)));
      }
    }
    return candidates;
  }

  /** The corners of a blank alone, as it lies in its bundle. */
  private List<Coordinate> shape(Bundle bundle) {
    Polygon outline = task.blanks().get(bundle.number()).outline();
    return List.of(bundle.blanks().get(0).placement().of(outline).getCoordinates());
  }

  private OptionalDouble saved(Bundle first, Bundle second) {
    return Pairing.of(task, first, second)
        .filter(fits)
        .map(pair -> OptionalDouble.of(apart(first, second) - Pairing.area(pair)))
        .orElse(OptionalDouble.empty());
  }

  private static double apart(Bundle first, Bundle second) {
    return Pairing.area(first) + Pairing.area(second);
  }

  private Pairs with(Candidate chosen) {
    Bundle pair = Pairing.of(task, chosen.first(), chosen.second()).orElseThrow();
    List<Bundle> changed = new ArrayList<>(bundles);
    changed.remove(chosen.second());
    changed.set(changed.indexOf(chosen.first()), pair);
    return new Pairs(task, changed, fits);
  }
}
