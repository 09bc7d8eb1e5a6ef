package plycrag.solve.support;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The back of one facet's frame in section, a straight line from its lower to its upper end.
 *
 * @param facet whose it is
 * @param angle from vertical, degrees; positive leans out
 * @param low its lower end
 * @param high its upper end
 * @param studs left sides of its studs that may bear, x of the run, ascending, mm
 * @param falls how much shorter, along it, the frame is at each of those studs than where it is
 *     longest, as under an upper edge that slants or steps, mm
 * @param clear those of them that have room for plywood on either side, from end to end
 * @param lower so much further down than it might be, along it, something ends on it, since inserts
 *     are in the way there, mm
 */
public record BackEdge(
    String facet,
    double angle,
    SectionPlace low,
    SectionPlace high,
    List<Double> studs,
    List<Double> falls,
    List<Double> clear,
    double lower) {
  /** What leans further has no back that something level can end on (a choice, no source). */
  static final double STEEPEST = 60;

  /** What leans less has no back that something upright can end on (a choice, no source). */
  static final double FLATTEST = 20;

  /**
   * Copies the studs.
   *
   * @throws IllegalArgumentException if not every stud has its fall
   */
  public BackEdge {
    studs = List.copyOf(studs);
    falls = List.copyOf(falls);
    if (studs.size() != falls.size()) {
      throw new IllegalArgumentException(studs.size() + " studs with " + falls.size() + " falls");
    }
    clear = List.copyOf(clear);
  }

  /** The same where something ends on it further down. */
  public BackEdge lowered(double by) {
    return new BackEdge(facet, angle, low, high, studs, falls, clear, by);
  }

  /** As far as it reaches at a station: at the stud there, or at the one that is nearest. */
  BackEdge at(double station) {
    return shortened(fall(station));
  }

  /** As far as it reaches at all of some stations. */
  BackEdge atAll(List<Double> stations) {
    return shortened(stations.stream().mapToDouble(this::fall).max().orElse(0));
  }

  /** How much shorter than where it is longest the frame is at a station, along it, mm. */
  double fall(double station) {
    return IntStream.range(0, studs.size())
        .boxed()
        .min(Comparator.comparingDouble(at -> Math.abs(studs.get(at) - station)))
        .map(falls::get)
        .orElse(0.0);
  }

  private BackEdge shortened(double by) {
    if (by == 0) {
      return this;
    }
    double left = 1 - by / length();
    SectionPlace end = new SectionPlace(low.y() + run() * left, low.z() + rise() * left);
    return new BackEdge(facet, angle, low, end, studs, falls, clear, lower);
  }

  /** How far it runs toward the climber, mm. */
  double run() {
    return high.y() - low.y();
  }

  /** How far it rises, mm. */
  double rise() {
    return high.z() - low.z();
  }

  /** From end to end, mm. */
  double length() {
    return Math.sqrt(run() * run() + rise() * rise());
  }

  /** Where it stands at a height, beyond its ends too. */
  double y(double z) {
    return low.y() + (z - low.z()) * (high.y() - low.y()) / (high.z() - low.z());
  }

  /** How high it is at a place, beyond its ends too. */
  double z(double y) {
    return low.z() + (y - low.y()) * (high.z() - low.z()) / (high.y() - low.y());
  }

  /** Whether something level can end on it. */
  boolean takesLevel() {
    return Math.abs(angle) <= STEEPEST;
  }

  /** Whether something from above can end on it. */
  boolean takesUpright() {
    return angle >= FLATTEST;
  }
}
