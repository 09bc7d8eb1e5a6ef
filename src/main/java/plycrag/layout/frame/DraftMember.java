package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * A member that has its place and has no mark yet.
 *
 * @param wished what it was wished to be
 * @param footprint what it takes of the plane of the sheets' back
 * @param sides how each side of the footprint goes on behind
 */
public record DraftMember(WishedMember wished, Polygon footprint, List<SlopingSide> sides) {
  /** The sine of 45°. */
  private static final double SHARP = 0.7072;

  /** No end is cut to a thinner wedge: so far along for each millimetre behind (a choice). */
  private static final double SHARPEST = 2;

  /** What is smaller is none, mm². */
  private static final double CRUMB = 1;

  public DraftMember {
    sides = List.copyOf(sides);
  }

  /** What it takes at its back. */
  Polygon far() {
    return at(wished.depth());
  }

  /** What it takes at a depth behind the sheets, mm. */
  Polygon at(double depth) {
    return Offsets.moved(footprint, side -> sides.get(side).slope() * depth);
  }

  /** The smallest box around all that it takes from the sheets' back to its own. */
  Envelope box() {
    Envelope box = new Envelope(footprint.getEnvelopeInternal());
    box.expandToInclude(far().getEnvelopeInternal());
    return box;
  }

  /** The same, cut square through its depth where an end would go on behind. */
  DraftMember endedSquare() {
    List<SlopingSide> square =
        sides.stream()
            .map(
                side ->
                    Direction.of(side.edge()).isParallel(direction())
                        ? side
                        : new SlopingSide(side.edge(), Math.min(side.slope(), 0)))
            .toList();
    return new DraftMember(wished, footprint, square);
  }

  /** Whether both take the same ground at the back of the less deep one. */
  boolean meetsBehind(DraftMember other) {
    return !sharedBehind(other).isEmpty();
  }

  /** The ground that both take at the back of the less deep one; empty for a crumb. */
  Geometry sharedBehind(DraftMember other) {
    double depth = Math.min(wished.depth(), other.wished().depth());
    return Shapes.whole(
        Shapes.sharedAreas(at(depth), other.at(depth)).stream()
            .filter(area -> area.getArea() > CRUMB)
            .toList());
  }

  /** Whether its sides still come in the same order at its back, none of them turned round. */
  boolean keepsItsShape() {
    List<LineString> near = Shapes.outerEdges(footprint);
    List<LineString> back = Shapes.outerEdges(far());
    return IntStream.range(0, near.size())
        .allMatch(
            side -> {
              Coordinate from = near.get(side).getCoordinateN(0);
              Coordinate to = near.get(side).getCoordinateN(1);
              Coordinate farFrom = back.get(side).getCoordinateN(0);
              Coordinate farTo = back.get(side).getCoordinateN(1);
              return (to.x - from.x) * (farTo.x - farFrom.x)
                      + (to.y - from.y) * (farTo.y - farFrom.y)
                  > 0;
            });
  }

  /** The member. */
  public Member marked(String mark) {
    return new Member(
        mark, wished.role(), wished.fixity(), wished.direction(), footprint, far(), wished.depth());
  }

  Direction direction() {
    return wished.direction();
  }

  /** Where each of its long sides against the sheets ends along its direction, mm. */
  List<Double> ends(boolean high) {
    return ends(footprint, high);
  }

  private List<Double> ends(Polygon face, boolean high) {
    return Shapes.outerEdges(face).stream()
        .filter(edge -> Direction.of(edge).isParallel(direction()))
        .map(edge -> direction().span(edge))
        .map(span -> high ? span.high() : span.low())
        .toList();
  }

  /** From where to where the corners of an end lie along its direction, all the way behind, mm. */
  Direction.Span end(boolean high) {
    List<Double> ends = new ArrayList<>(ends(footprint, high));
    ends.addAll(ends(far(), high));
    double along = high ? along().high() : along().low();
    return ends.isEmpty()
        ? new Direction.Span(along, along)
        : new Direction.Span(Collections.min(ends), Collections.max(ends));
  }

  /**
   * The same with ends as they are against the sheets, and cut slanting so that at a depth behind
   * them they lie between two places; none if they would be cut too sharply.
   *
   * @param low along its direction, mm
   * @param high along its direction, mm
   * @param depth mm
   */
  Optional<DraftMember> within(double low, double high, double depth) {
    Direction.Span there = direction().span(at(depth));
    double lowLoss = Math.max(0, low - there.low());
    double highLoss = Math.max(0, there.high() - high);
    if (Math.max(lowLoss, highLoss) > SHARPEST * depth) {
      return Optional.empty();
    }
    List<SlopingSide> slanting =
        sides.stream()
            .map(
                side -> {
                  boolean isHigh = direction().along(side.edge().getCentroid()) > along().middle();
                  double sine = direction().sine(Direction.of(side.edge()));
                  double loss = (isHigh ? highLoss : lowLoss) * sine / depth;
                  return sine > Tolerance.ALONG_TIMBER
                      ? new SlopingSide(side.edge(), side.slope() - loss)
                      : side;
                })
            .toList();
    return Optional.of(new DraftMember(wished, footprint, slanting));
  }

  /** Where it lies along its direction, mm. */
  Direction.Span along() {
    return direction().span(footprint);
  }

  /** The same over its long points, mm. */
  Direction.Span reach() {
    Direction.Span back = direction().span(far());
    Direction.Span near = along();
    return new Direction.Span(Math.min(near.low(), back.low()), Math.max(near.high(), back.high()));
  }

  /** The sides of an area that were made by others' sides, or by the wished's own. */
  static List<SlopingSide> sides(Polygon area, List<SlopingSide> around, WishedMember wished) {
    List<SlopingSide> sides = new ArrayList<>();
    for (LineString edge : Shapes.outerEdges(area)) {
      boolean isOwn = isOwnSide(edge, wished);
      sides.add(
          around.stream()
              .filter(side -> !isOwn && side.holds(edge))
              .findFirst()
              .map(side -> new SlopingSide(edge, slope(edge, side, wished)))
              .orElseGet(() -> own(edge, wished)));
    }
    return sides;
  }

  /**
   * An end goes with what it meets; but where it meets it at a sharp angle and that leaves it
   * behind, it would run out into a feather, and is cut square through its depth instead.
   */
  private static double slope(LineString edge, SlopingSide side, WishedMember wished) {
    double slope = side.slopeFor(edge);
    double sine = wished.direction().sine(Direction.of(edge));
    return sine > Tolerance.ALONG_TIMBER && sine < SHARP ? Math.min(slope, 0) : slope;
  }

  /** Whether it is a long side that nothing took from: it goes on as the timber is ripped. */
  private static boolean isOwnSide(LineString edge, WishedMember wished) {
    Direction across = wished.direction().across();
    double place = across.along(edge.getCentroid());
    Direction.Span beside = wished.beside();
    double away = Math.min(Math.abs(place - beside.low()), Math.abs(place - beside.high()));
    return Direction.of(edge).isParallel(wished.direction()) && away < Tolerance.TOUCH;
  }

  private static SlopingSide own(LineString edge, WishedMember wished) {
    boolean isLong = Direction.of(edge).isParallel(wished.direction());
    if (!isLong || wished.lean() == 0) {
      return new SlopingSide(edge, 0);
    }
    Direction across = wished.direction().across();
    boolean upper = across.along(edge.getCentroid()) > wished.beside().middle();
    return new SlopingSide(edge, upper ? wished.lean() : -wished.lean());
  }
}
