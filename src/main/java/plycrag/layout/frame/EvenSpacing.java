package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;

/**
 * Divides a stretch between two members evenly, with as few others on the marking grid as keep a
 * greatest spacing.
 */
final class EvenSpacing {
  private final double low;
  private final double high;
  private final double most;
  private final Tape tape;
  private final boolean fromHigh;

  /**
   * @param low where the even division begins, mm
   * @param high where it ends, mm
   * @param most greatest distance between neighbours, mm
   * @param tape what it is set out with
   * @param fromHigh whether it is set out from the high end, so that halves lie nearer to the low
   *     one
   */
  EvenSpacing(double low, double high, double most, Tape tape, boolean fromHigh) {
    this.low = low;
    this.high = high;
    this.most = most;
    this.tape = tape;
    this.fromHigh = fromHigh;
  }

  /**
   * The middles of the members between.
   *
   * @param before the middle of the member at the beginning, mm
   * @param after that of the one at the end, mm
   */
  List<Double> middles(double before, double after) {
    int bays = (int) Tolerance.wholeUp((high - low) / most);
    List<Double> middles = divided(bays);
    while (Tolerance.isMore(widest(before, middles, after), most)) {
      bays++;
      middles = divided(bays);
    }
    return middles;
  }

  private List<Double> divided(int bays) {
    List<Double> middles = new ArrayList<>();
    for (int bay = 1; bay < bays; bay++) {
      middles.add(snapped(low + (high - low) * bay / bays));
    }
    return middles;
  }

  private double snapped(double place) {
    double about = tape.snapUp(low + high);
    return fromHigh ? about - tape.snap(about - place) : tape.snap(place);
  }

  private static double widest(double before, List<Double> middles, double after) {
    double widest = 0;
    double from = before;
    for (double middle : middles) {
      widest = Math.max(widest, middle - from);
      from = middle;
    }
    return Math.max(widest, after - from);
  }
}
