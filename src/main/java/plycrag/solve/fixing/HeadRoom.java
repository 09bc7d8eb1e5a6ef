package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * Where heads, washers and nuts would meet other timber on the outer sides of two members.
 *
 * @param lap the face that the two share
 * @param first through which screws go
 * @param second into which they go
 * @param others the timber around
 * @param fasteners what is in all timber and on it already
 */
record HeadRoom(
    Lap lap, TimberBody first, TimberBody second, List<TimberBody> others, List<Solid> fasteners) {
  /** Timber nearer to the outer side than this touches it, mm. */
  private static final double TOUCH = 0.5;

  /** As far out as heads and nuts reach, mm. */
  private static final double HIGH = 15;

  /**
   * The line through both at a spot. Where an outer side slants, as at a fold, a washer lies on it
   * with one edge.
   *
   * @param washer the diameter of what bears on both outer sides, mm
   */
  ThroughLine line(FacePlace spot, double washer) {
    Vector3 way = lap.outward();
    Vector3 on =
        lap.corner().plus(lap.along().times(spot.along())).plus(lap.across().times(spot.across()));
    double before = reach(first, on, way.times(-1), washer);
    double beyond = reach(second, on, way, washer);
    return new ThroughLine(on.minus(way.times(before)), way, before + beyond);
  }

  private static double reach(TimberBody through, Vector3 on, Vector3 way, double washer) {
    return Stream.concat(Stream.of(on), new Rod(on, way, 0, washer).ring(0, washer).stream())
        .mapToDouble(place -> through.through(place, way))
        .max()
        .orElseThrow();
  }

  /** Whether no other fastener is where something would go through both at a spot. */
  boolean isFree(FacePlace spot, ThroughFastener kind, double diameter) {
    double head = 2 * kind.head() * diameter;
    ThroughLine line = line(spot, head);
    Vector3 end = line.from().plus(line.way().times(line.grip()));
    return Stream.of(
            new Rod(line.from(), line.way(), line.grip(), diameter + SteelPlace.APART),
            new Rod(line.from(), line.way().times(-1), HIGH, head),
            new Rod(end, line.way(), kind == ThroughFastener.BOLT ? HIGH : 0, head))
        .map(Rod::body)
        .noneMatch(
            body ->
                fasteners.stream()
                    .anyMatch(other -> body.overlapsByMoreThan(Tolerance.TOUCH, other)));
  }

  /**
   * The stretches of a line along both that other timber or what is in it takes.
   *
   * @param line across, mm
   * @param kind of what goes through
   * @param diameter of it, mm
   */
  List<Span> taken(double line, ThroughFastener kind, double diameter) {
    double head = kind.head() * diameter;
    List<Span> taken = new ArrayList<>(taken(outside(first, -1, line, head), head));
    if (kind == ThroughFastener.BOLT) {
      taken.addAll(taken(outside(second, 1, line, head), head));
    }
    double shank = diameter / 2 + SteelPlace.APART;
    taken.addAll(spans(inside(line, shank), fasteners.stream(), shank));
    return taken;
  }

  private List<Span> taken(FaceCorridor window, double radius) {
    Stream<Solid> solids =
        Stream.concat(others.stream().map(TimberBody::solid), fasteners.stream());
    return spans(window, solids, radius);
  }

  private static List<Span> spans(FaceCorridor window, Stream<Solid> solids, double radius) {
    return solids
        .flatMap(other -> window.met(other).stream())
        .map(span -> new Span(span.low() - radius, span.high() + radius))
        .toList();
  }

  /** On the outer side of one of them: the first one's with -1, the second one's with 1. */
  private FaceCorridor outside(TimberBody through, double side, double line, double radius) {
    Vector3 outward = lap.outward().times(side);
    double thick = thick(through, outward, line);
    return corridor(outward, line, radius, new Span(thick + TOUCH, thick + HIGH));
  }

  private FaceCorridor inside(double line, double radius) {
    Vector3 outward = lap.outward();
    Span both = new Span(-thick(first, outward.times(-1), line), thick(second, outward, line));
    return corridor(outward, line, radius, both);
  }

  private double thick(TimberBody through, Vector3 outward, double line) {
    double middle =
        (lap.shared().least(FacePlace::along) + lap.shared().most(FacePlace::along)) / 2;
    Vector3 on = lap.corner().plus(lap.along().times(middle)).plus(lap.across().times(line));
    return through.through(on, outward);
  }

  private FaceCorridor corridor(Vector3 outward, double line, double radius, Span height) {
    return new FaceCorridor(
        lap.corner(),
        lap.along(),
        lap.across(),
        outward,
        new Span(line - radius, line + radius),
        height);
  }
}
