package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.standing.SheetDatum;

/**
 * Laths with the readings of whole rows, or columns, that several of them share, whatever their
 * pitch: lines are struck by one rod and holes marked along them by the others.
 *
 * @param byRows whether lines run across the sheet, or else up it
 * @param lines of the rod that gives the lines, ascending, mm from the datum
 * @param rods along the lines, those with most readings first
 */
record RodPlan(boolean byRows, List<Double> lines, List<Rod> rods) {
  /** More rods are mixed up (a choice, no source). */
  private static final int MOST = 4;

  /** So many holes a reading at least, or a tape is as quick (a choice, no source). */
  private static final double HOLES_A_READING = 2;

  /** By how much readings may differ on one rod, mm. */
  private static final double SAME = 0.25;

  RodPlan {
    lines = List.copyOf(lines);
    rods = List.copyOf(rods);
  }

  /**
   * A rod along lines.
   *
   * @param readings on it, ascending, mm from the datum
   * @param lines along which it is laid, ascending, mm from the datum
   */
  record Rod(List<Double> readings, List<Double> lines) {
    Rod {
      readings = List.copyOf(readings);
      lines = List.copyOf(lines);
    }
  }

  /** The rods for a sheet, if so few serve its rows or columns. */
  static Optional<RodPlan> of(LaidSheet sheet, SheetDatum datum) {
    Optional<RodPlan> rows = of(sheet, datum, true);
    return rows.isPresent() ? rows : of(sheet, datum, false);
  }

  private static Optional<RodPlan> of(LaidSheet sheet, SheetDatum datum, boolean byRows) {
    Map<Double, TreeSet<Double>> lines = new TreeMap<>();
    for (MachinedHole hole : sheet.inserts()) {
      double across = Shapes.onGrid(datum.across(hole.spot().x()));
      double up = Shapes.onGrid(datum.up(hole.spot().y()));
      lines
          .computeIfAbsent(byRows ? up : across, line -> new TreeSet<>())
          .add(byRows ? across : up);
    }
    List<Rod> rods = rods(lines);
    int readings = lines.size() + rods.stream().mapToInt(rod -> rod.readings().size()).sum();
    boolean shared = rods.size() <= MOST && 2 * rods.size() <= lines.size();
    return shared && sheet.inserts().size() >= HOLES_A_READING * readings
        ? Optional.of(new RodPlan(byRows, List.copyOf(lines.keySet()), rods))
        : Optional.empty();
  }

  /** A line whose readings all stand on another's rod takes that. */
  private static List<Rod> rods(Map<Double, TreeSet<Double>> lines) {
    List<Double> fullest = new ArrayList<>(lines.keySet());
    fullest.sort(Comparator.comparingInt((Double line) -> -lines.get(line).size()));
    List<TreeSet<Double>> readings = new ArrayList<>();
    List<TreeSet<Double>> served = new ArrayList<>();
    for (double line : fullest) {
      int rod = 0;
      while (rod < readings.size() && !holds(readings.get(rod), lines.get(line))) {
        rod++;
      }
      if (rod == readings.size()) {
        readings.add(lines.get(line));
        served.add(new TreeSet<>());
      }
      served.get(rod).add(line);
    }
    List<Rod> rods = new ArrayList<>();
    for (int rod = 0; rod < readings.size(); rod++) {
      rods.add(new Rod(List.copyOf(readings.get(rod)), List.copyOf(served.get(rod))));
    }
    return rods;
  }

  private static boolean holds(TreeSet<Double> rod, TreeSet<Double> line) {
    return line.stream()
        .allMatch(reading -> rod.stream().anyMatch(other -> Math.abs(other - reading) <= SAME));
  }
}
