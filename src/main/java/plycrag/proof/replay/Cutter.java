package plycrag.proof.replay;

import java.util.Optional;
import plycrag.geometry.Trig;

/**
 * A tool that a program may use.
 *
 * @param number as programs and people name it
 * @param diameter mm
 * @param sideways whether it cuts sideways too; a drill does not
 * @param speed at which the spindle is to turn, revolutions per minute
 * @param feeds how fast it cuts
 * @param taper of a tool that is narrower at its end
 * @param steps how deep it goes at a time; where none are told, that is not judged
 */
public record Cutter(
    int number,
    double diameter,
    boolean sideways,
    double speed,
    Feeds feeds,
    Optional<Taper> taper,
    Optional<Steps> steps) {
  /**
   * How fast a tool cuts.
   *
   * @param plunge straight down, mm/min; aslant it goes down no faster
   * @param cut sideways at most, mm/min
   */
  public record Feeds(double plunge, double cut) {}

  /**
   * A cone.
   *
   * @param tip how wide it is at its end, mm
   * @param angle between its sides, degrees
   */
  public record Taper(double tip, double angle) {}

  /**
   * How deep a tool goes at a time.
   *
   * @param pass through fresh wood sideways at most, mm
   * @param peck before it comes out for its chips; empty in one go, mm
   */
  public record Steps(double pass, Optional<Double> peck) {}

  /** A tool that is as wide at its end as above. */
  public Cutter(int number, double diameter, boolean sideways, double speed, Feeds feeds) {
    this(number, diameter, sideways, speed, feeds, Optional.empty(), Optional.empty());
  }

  /** The same with a cone at its end. */
  public Cutter tapering(Taper cone) {
    return new Cutter(number, diameter, sideways, speed, feeds, Optional.of(cone), steps);
  }

  /** The same that goes so deep at a time. */
  public Cutter stepping(Steps deep) {
    return new Cutter(number, diameter, sideways, speed, feeds, taper, Optional.of(deep));
  }

  /** Whether it clears wood by passes. */
  boolean routs() {
    return sideways && taper.isEmpty() && steps.isPresent();
  }

  /** How wide it cuts where it stands so deep, mm. */
  double width(double depth) {
    return taper
        .map(cone -> Math.min(diameter, cone.tip() + 2 * depth * Trig.tan(cone.angle() / 2)))
        .orElse(diameter);
  }

  double radius() {
    return diameter / 2;
  }

  boolean turnsAt(double asked) {
    return Math.abs(speed - asked) <= Accuracy.RATE;
  }

  boolean cutsAt(double rate, TipPlace from, TipPlace to) {
    if (from.isAbove(to)) {
      return Math.abs(feeds.plunge() - rate) <= Accuracy.RATE;
    }
    double down = rate * (from.z() - to.z()) / from.beside(to);
    return rate <= feeds.cut() + Accuracy.RATE && down <= feeds.plunge() + Accuracy.RATE;
  }
}
