package plycrag.finding;

import plycrag.units.Tape;

/**
 * What was found against what is required.
 *
 * @param found mm; below zero where two things overlap
 * @param required mm; the least allowed
 */
public record Measure(double found, double required) {
  /** How far the found length falls short, mm; above zero in a finding. */
  public double shortfall() {
    return required - found;
  }

  /** What was found in words: {@code overlaps X by 8 mm}, {@code is 2 mm from X}. */
  public String standing(String other, Tape tape) {
    return found < 0
        ? "overlaps " + other + " by " + tape.size(-found)
        : "is " + tape.size(found) + " from " + other;
  }
}
