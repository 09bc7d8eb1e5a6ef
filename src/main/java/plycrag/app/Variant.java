package plycrag.app;

import java.util.List;
import java.util.Optional;
import plycrag.document.Cell;
import plycrag.units.Significant;

/**
 * One of the walls of a study.
 *
 * @param values of the keys that vary, in their order
 * @param tally of it; empty if its file is wrong
 * @param fault of its file, told first; empty if there is none
 */
record Variant(List<String> values, Optional<Tally> tally, String fault) {
  /** Copies the values. */
  Variant {
    values = List.copyOf(values);
  }

  /** Whether it may be made and nothing beats it. */
  boolean isBest(List<Variant> all) {
    return tally.filter(Tally::isSound).isPresent()
        && all.stream()
            .flatMap(other -> other.tally().stream())
            .filter(Tally::isSound)
            .noneMatch(other -> other.beats(tally.get()));
  }

  /** What a table tells behind its values; as many cells for every variant. */
  List<Cell> cells(boolean isBest) {
    Cell none = Cell.of("");
    return tally
        .map(
            one ->
                List.of(
                    one.cost().map(Cell::money).orElse(none),
                    Cell.number(one.mass(), 1),
                    Cell.of(one.counts().inserts()),
                    Cell.of(one.counts().sheets()),
                    Cell.of(one.counts().sticks()),
                    Cell.number(100 * one.waste().sheets(), 1),
                    Cell.number(100 * one.waste().sticks(), 1),
                    one.strength().flatMap(Tally.Strength::largest).map(Variant::cell).orElse(none),
                    one.strength().map(found -> Cell.of(found.failing())).orElse(none),
                    Cell.of(one.errors()),
                    Cell.of(one.warnings()),
                    Cell.of(isBest ? "yes" : "")))
        .orElseGet(
            () ->
                List.of(
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    none,
                    Cell.of("wrong: " + fault)));
  }

  private static Cell cell(double utilisation) {
    return Cell.number(utilisation, Significant.decimals(utilisation));
  }
}
