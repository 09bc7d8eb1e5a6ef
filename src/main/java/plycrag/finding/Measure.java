package plycrag.finding;

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
}
