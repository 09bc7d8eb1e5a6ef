package plycrag.solve.scatter;

import java.util.OptionalDouble;

/**
 * How centres are scattered.
 *
 * @param fade the distance that they keep
 * @param step of the marking grid, mm
 * @param seed chooses one of all scatters
 * @param mirror the upright line about which the scatter is symmetric, mm across; empty for none
 */
public record Spread(Fade fade, double step, long seed, OptionalDouble mirror) {
  /**
   * Checks the step.
   *
   * @throws IllegalArgumentException if it is not positive
   */
  public Spread {
    if (!(step > 0)) {
      throw new IllegalArgumentException("no marking grid of " + step);
    }
  }
}
