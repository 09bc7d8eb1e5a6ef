package plycrag.machining;

import java.util.ArrayList;
import java.util.List;

/**
 * The bridges that hold a piece, evenly along its way; of a short way they take half at most.
 *
 * @param stations where each begins along the way, mm
 * @param width how far the tool stays up for each, mm
 * @param top Z of a bridge, mm
 */
record Tabs(List<Double> stations, double width, double top) {
  static final Tabs NONE = new Tabs(List.of(), 0, Double.NEGATIVE_INFINITY);

  /** Farther apart a sheet would spring between them (common practice, no source). */
  private static final double APART = 500;

  /** Fewer would let a piece turn. */
  private static final int FEWEST = 3;

  Tabs {
    stations = List.copyOf(stations);
  }

  static Tabs along(CutPath path, double width, double top) {
    double length = path.length();
    int count = Math.max(path.closed() ? FEWEST : 1, (int) Math.ceil(length / APART));
    double narrow = Math.min(width, length / 2 / count);
    List<Double> stations = new ArrayList<>();
    for (int tab = 0; tab < count; tab++) {
      stations.add(length * (tab + 0.5) / count - narrow / 2);
    }
    return new Tabs(stations, narrow, top);
  }

  /** Where bridges begin or end between two places along a way that is so long, in order, mm. */
  List<Double> ends(double from, double to, double length) {
    List<Double> ends = new ArrayList<>();
    for (double round = 0; round < to; round += length) {
      for (double station : stations) {
        addBetween(from, round + station, to, ends);
        addBetween(from, round + station + width, to, ends);
      }
    }
    return ends;
  }

  private static void addBetween(double from, double at, double to, List<Double> ends) {
    if (from < at && at < to) {
      ends.add(at);
    }
  }

  /** Whether a place along a way that is so long lies on a bridge. */
  boolean holds(double along, double length) {
    double once = along % length;
    return stations.stream().anyMatch(station -> station < once && once < station + width);
  }
}
