package plycrag.app;

import java.math.BigDecimal;
import java.util.Optional;
import plycrag.check.structure.StructureLine;
import plycrag.check.structure.StructureReport;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.stock.JobFigures;

/**
 * What of a wall is compared with others.
 *
 * @param cost with tax; empty where a price is missing
 * @param mass of sheets and timber as built, kg
 * @param area to climb on, m²
 * @param longest to carry, mm
 * @param waste of sheets and sticks
 * @param counts of what it is made of
 * @param errors that were found
 * @param warnings likewise
 * @param strength what the preliminary structural check says; empty where there is none
 */
record Tally(
    Optional<BigDecimal> cost,
    double mass,
    double area,
    double longest,
    JobFigures.Waste waste,
    Counts counts,
    int errors,
    int warnings,
    Optional<Strength> strength) {

  /**
   * What a wall is made of.
   *
   * @param inserts for holds
   * @param sheets as bought
   * @param sticks likewise
   * @param members of timber
   * @param screws through sheets
   */
  record Counts(int inserts, int sheets, int sticks, int members, int screws) {}

  /**
   * What the preliminary structural check says.
   *
   * @param largest utilisation; empty where no line has one
   * @param failing how many lines fail, those that have no utilisation too
   */
  record Strength(Optional<Double> largest, int failing) {
    private static Optional<Strength> of(StructureReport report) {
      return report.lines().isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Strength(
                  report.governing(line -> true).flatMap(StructureLine::utilisation),
                  report.failing()));
    }
  }

  /** That of a wall that was judged. */
  static Tally of(Design.Judged design) {
    Bill bill = Bill.of(design);
    Layout layout = design.checked().layout();
    return new Tally(
        bill.costs().total().isComplete()
            ? Optional.of(bill.costs().total().known())
            : Optional.empty(),
        bill.figures().standing(),
        bill.figures().area(),
        bill.figures().load().longest(),
        bill.figures().waste(),
        new Counts(
            layout.inserts().size(),
            layout.sheets().size(),
            bill.plan().sticks().size(),
            layout.members().size(),
            layout.screws().size()),
        design.checked().findings(Severity.ERROR).size(),
        design.checked().findings(Severity.WARNING).size(),
        Strength.of(design.checked().structure()));
  }

  /** Whether it may be made. */
  boolean isSound() {
    return errors == 0;
  }

  /**
   * Whether it is better in one thing and worse in none: dearer, heavier, of more sheets or sticks,
   * of fewer inserts. A price that is not known is neither.
   */
  boolean beats(Tally other) {
    int[] signs = {
      cost.isPresent() && other.cost.isPresent() ? other.cost.get().compareTo(cost.get()) : 0,
      Double.compare(other.mass, mass),
      Integer.compare(other.counts.sheets, counts.sheets),
      Integer.compare(other.counts.sticks, counts.sticks),
      Integer.compare(counts.inserts, other.counts.inserts)
    };
    boolean better = false;
    for (int sign : signs) {
      if (sign < 0) {
        return false;
      }
      better |= sign > 0;
    }
    return better;
  }
}
