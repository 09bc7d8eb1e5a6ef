package plycrag.check.structure;

import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.solve.timber.Worked;
import plycrag.units.Significant;

/**
 * A part of a wall held against what it bears.
 *
 * @param part its mark, or {@code wall}
 * @param check what is checked, in words
 * @param clause where its formula stands
 * @param loadCase the loads under which it is worst
 * @param demand on it, in the unit
 * @param capacity in the unit, where there is one
 * @param unit of both
 * @param utilisation demand for capacity, where there is one
 * @param status what became of it
 * @param source of the capacity
 * @param worked the formula with its numbers, where there is one
 */
public record StructureLine(
    String part,
    String check,
    String clause,
    String loadCase,
    double demand,
    Optional<Double> capacity,
    String unit,
    Optional<Double> utilisation,
    LineStatus status,
    String source,
    Optional<Worked> worked) {

  /** A utilisation alone, of a formula whose parts have no unit together. */
  static StructureLine of(
      String part, String check, String loadCase, Worked worked, String source) {
    return new StructureLine(
        part,
        check,
        worked.clause(),
        loadCase,
        worked.value(),
        Optional.of(1.0),
        "",
        Optional.of(worked.value()),
        LineStatus.of(worked.value()),
        source,
        Optional.of(worked));
  }

  /** A demand against a capacity. */
  static StructureLine of(
      String part,
      String check,
      String clause,
      String loadCase,
      double demand,
      double capacity,
      String unit,
      String source) {
    return new StructureLine(
        part,
        check,
        clause,
        loadCase,
        demand,
        Optional.of(capacity),
        unit,
        Optional.of(demand / capacity),
        LineStatus.of(demand / capacity),
        source,
        Optional.empty());
  }

  /** A demand that nothing is known to bear. */
  static StructureLine needing(
      String part, String check, String loadCase, double demand, String unit, String needs) {
    return new StructureLine(
        part,
        check,
        "",
        loadCase,
        demand,
        Optional.empty(),
        unit,
        Optional.empty(),
        new LineStatus.NotChecked(needs),
        "",
        Optional.empty());
  }

  /** Whether its formula is told with all its numbers. */
  public boolean hasFormula() {
    return worked.isPresent();
  }

  /** Clause, formula and numbers to three figures, in a sentence. */
  public String reckoning() {
    String place = clause.isEmpty() ? "" : clause + ": ";
    return place + worked.map(StructureLine::inNumbers).orElseGet(this::inShort) + ".";
  }

  private static String inNumbers(Worked formula) {
    String symbols =
        formula.symbols().stream()
            .map(
                one -> one.name() + " = " + (Significant.of(one.value()) + " " + one.unit()).trim())
            .collect(Collectors.joining(", "));
    return formula.formula() + " with " + symbols + " is " + Significant.of(formula.value());
  }

  private String inShort() {
    String bears = capacity.map(one -> " against " + Significant.of(one)).orElse("");
    return (Significant.of(demand) + bears + " " + unit).trim();
  }
}
