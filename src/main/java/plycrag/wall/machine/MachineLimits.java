package plycrag.wall.machine;

import java.util.Optional;

/**
 * What the router can do.
 *
 * @param travel how far it moves, from one end to the other; a direction that is not told is not
 *     checked
 * @param rapidRate how fast it goes without cutting, mm/min
 * @param acceleration how fast it comes to speed and stops, mm/s²
 * @param spindle the speeds of its spindle
 * @param longSide which way sheets lie on its bed
 */
public record MachineLimits(
    Travel travel, double rapidRate, double acceleration, SpeedRange spindle, LongSide longSide) {
  /** Along which axis the longer side of every sheet lies. */
  public enum LongSide {
    /** As the first piece of each stands on the wall. */
    AS_BUILT,
    /** Across. */
    X,
    /** Away from the machine's front. */
    Y
  }

  /** What stands for a least speed that nobody told, rpm. */
  public static final double UNTOLD_SPEED = 100;

  /** Most routers turn no slower (common practice, no source), rpm. */
  private static final double SLOWEST_ROUTER = 8000;

  /** Whether a speed may be too slow for the spindle, of which nobody told how slowly it turns. */
  public boolean mayBeTooSlow(double speed) {
    return spindle.least() <= UNTOLD_SPEED && speed < SLOWEST_ROUTER;
  }

  /**
   * How far it moves.
   *
   * @param x across, mm
   * @param y away, mm
   * @param z up and down, mm
   */
  public record Travel(Optional<Double> x, Optional<Double> y, Optional<Double> z) {}
}
