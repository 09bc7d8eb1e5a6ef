package plycrag.wall.machine;

/**
 * The turns per minute that a spindle or a tool allows.
 *
 * @param least rpm
 * @param greatest rpm
 */
public record SpeedRange(double least, double greatest) {

  /** Whether a speed is allowed, rpm. */
  public boolean holds(double speed) {
    return least <= speed && speed <= greatest;
  }
}
