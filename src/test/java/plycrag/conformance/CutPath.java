package plycrag.conformance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * What LinuxCNC's interpreter cuts between two rapids: the places that the tool's tip passes, arcs
 * taken apart into steps of half a degree, mm. JTS buffers it, which no code of ours does.
 *
 * @param places in order, Z among them
 */
record CutPath(List<Coordinate> places) {
  private static final Pattern MOVE =
      Pattern.compile("(STRAIGHT_FEED|STRAIGHT_TRAVERSE|ARC_FEED)\\(([^)]*)\\)");
  private static final Pattern COMMA = Pattern.compile(", ");
  private static final double HALF_DEGREES = 720;
  private static final int ROUND = 64;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** The paths of a program in order; a tool that is only moved leaves none. */
  static List<CutPath> of(Path program, boolean inches) {
    Tools.Result result = Rs274.interpret(program);
    String unit = inches ? "USE_LENGTH_UNITS(CANON_UNITS_INCHES)" : "(CANON_UNITS_MM)";
    if (result.exit() != 0
        || !result.output().contains("PROGRAM_END()")
        || !result.output().contains(unit)) {
      throw new AssertionError(program + ": " + result);
    }
    List<CutPath> paths = new ArrayList<>();
    List<Coordinate> places = new ArrayList<>();
    Matcher moves = MOVE.matcher(result.output());
    while (moves.find()) {
      List<Double> numbers = numbers(moves.group(2), inches ? 25.4 : 1);
      if (moves.group(1).equals("STRAIGHT_TRAVERSE")) {
        if (places.size() > 1) {
          paths.add(new CutPath(List.copyOf(places)));
        }
        places.clear();
        places.add(new Coordinate(numbers.get(0), numbers.get(1), numbers.get(2)));
      } else if (moves.group(1).equals("STRAIGHT_FEED")) {
        places.add(new Coordinate(numbers.get(0), numbers.get(1), numbers.get(2)));
      } else {
        places.addAll(arc(places.get(places.size() - 1), numbers, inches ? 25.4 : 1));
      }
    }
    return paths;
  }

  static List<Double> numbers(String text, double unit) {
    return COMMA.splitAsStream(text).map(one -> Double.parseDouble(one) * unit).toList();
  }

  /**
   * RS274/NGC, NISTIR 6556, ARC_FEED: end, centre, rotation (positive against the clock), end Z.
   */
  static List<Coordinate> arc(Coordinate from, List<Double> to, double unit) {
    double centreX = to.get(2);
    double centreY = to.get(3);
    double start = Math.atan2(from.y - centreY, from.x - centreX);
    double end = Math.atan2(to.get(1) - centreY, to.get(0) - centreX);
    double way = to.get(4) / unit;
    double turn = (end - start) * way;
    double whole = turn <= 1e-9 ? turn + 2 * Math.PI : turn;
    double radius = Math.hypot(from.x - centreX, from.y - centreY);
    List<Coordinate> places = new ArrayList<>();
    for (int step = 1; step < HALF_DEGREES; step++) {
      double part = step / HALF_DEGREES;
      double angle = start + way * whole * part;
      places.add(
          new Coordinate(
              centreX + radius * Math.cos(angle),
              centreY + radius * Math.sin(angle),
              from.z + part * (to.get(5) - from.z)));
    }
    places.add(new Coordinate(to.get(0), to.get(1), to.get(5)));
    return places;
  }

  Coordinate last() {
    return places.get(places.size() - 1);
  }

  double lowest() {
    return places.stream().mapToDouble(Coordinate::getZ).min().orElseThrow();
  }

  /** Whether the tool cuts sideways too. */
  boolean isRouted() {
    return places.stream().anyMatch(place -> place.distance(last()) > 1e-6);
  }

  /** How far its middle goes from a place at most. */
  double farthest(Coordinate place) {
    return places.stream().mapToDouble(place::distance).max().orElseThrow();
  }

  /** What tools of a radius take away, down to a height or lower. */
  static Geometry swept(List<CutPath> paths, double radius, double height) {
    List<Geometry> swept = new ArrayList<>();
    for (CutPath path : paths) {
      List<Coordinate> run = new ArrayList<>();
      for (Coordinate place : path.places()) {
        if (place.z <= height) {
          run.add(place);
        } else {
          addRun(run, radius, swept);
        }
      }
      addRun(run, radius, swept);
    }
    return UnaryUnionOp.union(swept, FACTORY);
  }

  private static void addRun(List<Coordinate> run, double radius, List<Geometry> swept) {
    if (run.size() > 1) {
      swept.add(FACTORY.createLineString(run.toArray(Coordinate[]::new)).buffer(radius, ROUND));
    }
    run.clear();
  }
}
