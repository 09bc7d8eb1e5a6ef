package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import plycrag.drawing.pen.Readings;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.standing.SheetDatum;

/**
 * What a strip jig must be like to drill a sheet's rows.
 *
 * @param pitch between its holes, mm
 * @param diameter of its holes, mm
 * @param count of its holes
 * @param stops how far a row's first hole can lie from the edge it is set against, ascending, mm
 * @param fromRight whether that is the sheet's right edge, so that the strip lies the other way
 *     round than it is drawn
 */
record JigPlan(double pitch, double diameter, int count, List<Double> stops, boolean fromRight) {
  /** Longer strips bend, and few offcuts are longer (a choice, no source), mm. */
  private static final double LONGEST = 1_200;

  /** Fewer holes in a row are quicker marked. */
  private static final int FEWEST = 3;

  /** More stops are more work than paper is. */
  private static final int MOST_STOPS = 3;

  /** By how much a hole may stand off a jig's, mm. */
  private static final double TOLERANCE = 0.25;

  JigPlan {
    stops = List.copyOf(stops);
  }

  /** The jig for a sheet, if its rows stand at one pitch. */
  static Optional<JigPlan> of(LaidSheet sheet, SheetDatum datum) {
    Map<Double, TreeSet<Double>> rows = new TreeMap<>();
    TreeSet<Double> diameters = new TreeSet<>();
    for (MachinedHole hole : sheet.inserts()) {
      rows.computeIfAbsent(hole.spot().y(), y -> new TreeSet<>())
          .add(datum.across(hole.spot().x()));
      diameters.add(hole.bore().diameter());
    }
    List<TreeSet<Double>> across = List.copyOf(rows.values());
    double pitch = across.stream().mapToDouble(Readings::leastStep).min().orElse(0);
    int most = across.stream().mapToInt(TreeSet::size).max().orElse(0);
    boolean even = across.stream().allMatch(row -> isEven(row, pitch));
    List<Double> stops = stops(across, pitch);
    if (diameters.size() != 1 || most < FEWEST || !even || stops.size() > MOST_STOPS) {
      return Optional.empty();
    }
    int count = Math.min(most, 1 + (int) Math.floor(LONGEST / pitch));
    return count < FEWEST
        ? Optional.empty()
        : Optional.of(
            new JigPlan(Shapes.onGrid(pitch), diameters.first(), count, stops, datum.fromRight()));
  }

  private static boolean isEven(TreeSet<Double> row, double pitch) {
    return row.stream().allMatch(x -> isStep(x - row.first(), pitch));
  }

  private static boolean isStep(double distance, double pitch) {
    double steps = Math.abs(distance) / pitch;
    return Math.abs(steps - Math.round(steps)) * pitch <= TOLERANCE;
  }

  /** One jig in place of two, if both have the same holes and few stops together. */
  Optional<JigPlan> with(JigPlan other) {
    TreeSet<Double> both = new TreeSet<>(stops);
    both.addAll(other.stops);
    boolean alike =
        pitch == other.pitch && diameter == other.diameter && fromRight == other.fromRight;
    return alike && both.size() <= MOST_STOPS
        ? Optional.of(
            new JigPlan(
                pitch, diameter, Math.max(count, other.count), List.copyOf(both), fromRight))
        : Optional.empty();
  }

  /** First holes that differ by whole pitches share a stop: the strip is moved on. */
  private static List<Double> stops(List<TreeSet<Double>> rows, double pitch) {
    TreeSet<Double> firsts = new TreeSet<>();
    rows.forEach(row -> firsts.add(row.first()));
    List<Double> stops = new ArrayList<>();
    for (double first : firsts) {
      if (stops.stream().noneMatch(stop -> isStep(first - stop, pitch))) {
        stops.add(Shapes.onGrid(first));
      }
    }
    return stops;
  }
}
