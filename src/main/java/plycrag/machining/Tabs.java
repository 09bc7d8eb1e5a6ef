package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Tolerance;

/**
 * The bridges that hold a piece, evenly along its way but off its corners, where they would be hard
 * to trim; of a short way they take half at most.
 *
 * @param stations where each begins along the way, mm
 * @param width how far the tool stays up for each, mm
 * @param top Z of a bridge, mm
 * @param slope how the tool comes down after each
 */
record Tabs(List<Double> stations, double width, double top, Slope slope) {
  static final Tabs NONE = new Tabs(List.of(), 0, Double.NEGATIVE_INFINITY, Slope.NONE);

  /**
   * A way down after a bridge.
   *
   * @param length along the way, mm; 0 straight down
   * @param bottom Z that it reaches there, mm
   */
  record Slope(double length, double bottom) {
    static final Slope NONE = new Slope(0, 0);
  }

  Tabs(List<Double> stations, double width, double top) {
    this(stations, width, top, Slope.NONE);
  }

  /** Farther apart a sheet would spring between them (common practice, no source). */
  private static final double APART = 500;

  /** A way that turns by less bends rather than having a corner, degrees. */
  private static final double SHARP = 30;

  /** Fewer would let a piece turn. */
  private static final int FEWEST = 3;

  Tabs {
    stations = List.copyOf(stations);
  }

  /**
   * Bridges along a way, evenly but off its corners.
   *
   * @param width of each, mm
   * @param top Z of a bridge, mm
   * @param apart how far each keeps from corners, where there is room, mm
   */
  static Tabs along(CutPath path, double width, double top, double apart) {
    double length = path.length();
    int count = Math.max(path.closed() ? FEWEST : 1, (int) Math.ceil(length / APART));
    double narrow = Math.min(width, length / 2 / count);
    List<Double> corners = path.sharpCorners(SHARP);
    List<Double> stations = new ArrayList<>();
    for (int tab = 0; tab < count; tab++) {
      double even = length * (tab + 0.5) / count - narrow / 2;
      stations.add(offCorners(even, narrow, length, apart, corners));
    }
    stations.sort(null);
    return isApart(stations, narrow)
        ? new Tabs(stations, narrow, top)
        : even(count, length, narrow, top);
  }

  private static Tabs even(int count, double length, double narrow, double top) {
    List<Double> stations = new ArrayList<>();
    for (int tab = 0; tab < count; tab++) {
      stations.add(length * (tab + 0.5) / count - narrow / 2);
    }
    return new Tabs(stations, narrow, top);
  }

  private static boolean isApart(List<Double> stations, double width) {
    for (int at = 1; at < stations.size(); at++) {
      if (stations.get(at) - stations.get(at - 1) < 2 * width) {
        return false;
      }
    }
    return true;
  }

  /** The nearest place that keeps off all corners; where none does, the place itself. */
  private static double offCorners(
      double station, double width, double length, double apart, List<Double> corners) {
    double best = station;
    double nearest = Double.POSITIVE_INFINITY;
    List<Double> tried = new ArrayList<>(List.of(station));
    for (double corner : corners) {
      tried.add(corner + apart);
      tried.add(corner - apart - width);
    }
    for (double place : tried) {
      double away = Math.abs(place - station);
      boolean within = place >= 0 && place + width <= length;
      if (within && away < nearest && isOff(place, width, apart, corners)) {
        nearest = away;
        best = place;
      }
    }
    return best;
  }

  private static boolean isOff(double place, double width, double apart, List<Double> corners) {
    return corners.stream()
        .allMatch(
            corner ->
                Tolerance.atMost(corner + apart, place)
                    || Tolerance.atMost(place + width + apart, corner));
  }

  /** The same with a slope after each, cut short where the next bridge is near. */
  Tabs sloping(double asked, double bottom, CutPath path) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < stations.size(); at++) {
      boolean last = at == stations.size() - 1;
      double over = path.length() + (path.closed() ? stations.get(0) : 0);
      double next = last ? over : stations.get(at + 1);
      least = Math.min(least, next - stations.get(at) - width);
    }
    return new Tabs(stations, width, top, new Slope(Math.min(asked, least / 2), bottom));
  }

  /**
   * Where the tool's height may bend between two places along a way that is so long: where bridges
   * begin and end, and where a slope after one meets a height or ends, mm.
   */
  List<Double> ends(double from, double to, double length, double low) {
    List<Double> ends = new ArrayList<>();
    double down = slope.length() * (top - low) / (top - slope.bottom());
    for (double round = -length; round < to; round += length) {
      for (double station : stations) {
        double end = round + station + width;
        addBetween(from, round + station, to, ends);
        addBetween(from, end, to, ends);
        if (slope.length() > 0) {
          addBetween(from, end + slope.length(), to, ends);
          addBetween(from, end + Math.max(0, down), to, ends);
        }
      }
    }
    return ends;
  }

  /**
   * How low the tool may be, Z in mm.
   *
   * @param along the way, on a stretch between two of the ends, mm
   * @param within the middle of that stretch, mm
   */
  double floor(double along, double within, double length) {
    if (holds(within, length)) {
      return top;
    }
    for (double station : stations) {
      double after = ((within - station - width) % length + length) % length;
      if (after < slope.length()) {
        double part = (after + along - within) / slope.length();
        return top - part * (top - slope.bottom());
      }
    }
    return Double.NEGATIVE_INFINITY;
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
