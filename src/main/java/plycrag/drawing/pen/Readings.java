package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import plycrag.drawing.pen.RunningDimensions.Reading;
import plycrag.units.Tape;

/** What is read off a tape along one direction. */
public final class Readings {
  private Readings() {}

  /**
   * Each different reading once, in the tape's order.
   *
   * @param places from the datum, mm
   * @param toDrawing where a place lies on the drawing, mm
   */
  public static List<Reading> of(
      Collection<Double> places, Tape tape, DoubleUnaryOperator toDrawing) {
    List<Reading> readings = new ArrayList<>();
    for (double place : new TreeSet<>(places)) {
      String text = tape.reading(place);
      if (readings.isEmpty() || !readings.get(readings.size() - 1).text().equals(text)) {
        readings.add(new Reading(toDrawing.applyAsDouble(place), text));
      }
    }
    return readings;
  }

  /** The least distance between two different places, mm; a metre for fewer than two. */
  public static double leastStep(Collection<Double> places) {
    double least = 1_000;
    Double before = null;
    for (double place : new TreeSet<>(places)) {
      if (before != null) {
        least = Math.min(least, place - before);
      }
      before = place;
    }
    return least;
  }
}
