package plycrag;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Parameter files at random in which facets meet at corners and folds. */
public final class MeetingTexts {
  private MeetingTexts() {}

  /** Two walls that meet in a corner, each with a lean of its own, inside or outside. */
  public static Arbitrary<String> corners() {
    Arbitrary<Integer> leans = Arbitraries.integers().between(-10, 35);
    Arbitrary<Integer> turns =
        Arbitraries.oneOf(
            Arbitraries.integers().between(-90, -10), Arbitraries.integers().between(10, 90));
    Arbitrary<Integer> sizes = Arbitraries.integers().between(1200, 2440);
    return Combinators.combine(leans, leans, turns, sizes, Arbitraries.of("mitred", "square"))
        .as(
            (left, right, turn, size, folds) ->
                """
                [wall]
                raise = 60
                width = %s
                fold-edges = "%s"
                [[facet]]
                name = "left"
                angle = %s
                length = 2440
                [[facet]]
                name = "right"
                beside = "left"
                turn = %s
                angle = %s
                length = 2440
                """
                    .formatted(size, folds, left, turn, right));
  }

  /** A facet on another, and an opening near the fold, at it, or with its edge on it. */
  public static Arbitrary<String> openingsAtFolds() {
    Arbitrary<Integer> leans = Arbitraries.integers().between(-10, 30);
    Arbitrary<Integer> folds = Arbitraries.integers().between(1, 40);
    Arbitrary<Integer> off = Arbitraries.of(0, 0, 1, 12, 40, 100);
    Arbitrary<Integer> left = Arbitraries.integers().between(0, 2000);
    return Combinators.combine(leans, folds, off, left, Arbitraries.of("low", "high"))
        .as(
            (lean, fold, beside, from, facet) ->
                """
                [wall]
                width = 2400
                [[facet]]
                name = "low"
                angle = %s
                length = 1000
                [[facet]]
                name = "high"
                angle = %s
                length = 1200
                [[cutout]]
                name = "beam"
                facet = "%s"
                left = %s
                low = %s
                width = 300
                height = 260
                """
                    .formatted(
                        lean,
                        lean + fold,
                        facet,
                        from,
                        facet.equals("low") ? 1000 - 260 - beside : beside));
  }
}
