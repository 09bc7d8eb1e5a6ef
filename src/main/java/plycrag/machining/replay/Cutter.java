package plycrag.machining.replay;

/**
 * A tool that a program may use.
 *
 * @param number as programs and people name it
 * @param diameter mm
 * @param sideways whether it cuts sideways too; a drill does not
 * @param speed at which the spindle is to turn, revolutions per minute
 * @param feeds how fast it cuts
 */
public record Cutter(int number, double diameter, boolean sideways, double speed, Feeds feeds) {
  /** Half of the last digit that programs have, of inches too. */
  private static final double ROUNDING = 0.02;

  /**
   * How fast a tool cuts.
   *
   * @param plunge straight down, mm/min; aslant it goes down no faster
   * @param cut sideways at most, mm/min
   */
  public record Feeds(double plunge, double cut) {}

  double radius() {
    return diameter / 2;
  }

  boolean turnsAt(double asked) {
    return Math.abs(speed - asked) <= ROUNDING;
  }

  boolean cutsAt(double rate, Spot from, Spot to) {
    if (from.isAbove(to)) {
      return Math.abs(feeds.plunge() - rate) <= ROUNDING;
    }
    double down = rate * (from.z() - to.z()) / from.beside(to);
    return rate <= feeds.cut() + ROUNDING && down <= feeds.plunge() + ROUNDING;
  }
}
