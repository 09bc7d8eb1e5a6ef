package plycrag.solve.fixing;

import java.util.List;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * Where one leg of a bracket or a strap may lie: on a side of one member, from the line where it is
 * bent, or where two members meet, outward.
 *
 * @param body the member
 * @param face its side
 * @param flat that side as it lies flat, along the leg and across it from the origin
 * @param origin a place on that line
 * @param along the way of the leg, of length one
 * @param across the way of the line, of length one
 * @param gap how far from the line the face may begin, mm
 * @param others the timber around, neither of the two that are joined
 */
record Leg(
    TimberBody body,
    TimberFace face,
    FlatFace flat,
    Vector3 origin,
    Vector3 along,
    Vector3 across,
    double gap,
    List<TimberBody> others) {
  /** Nearer to the face than this nothing lies in a leg's way, mm. */
  private static final double TOUCH = 0.5;

  /** A leg with the heads of its screws is less thick than this, mm. */
  private static final double THICK = 6;

  /** The same with its side laid flat, once for all that is asked of it. */
  Leg(
      TimberBody body,
      TimberFace face,
      Vector3 origin,
      Vector3 along,
      Vector3 across,
      double gap,
      List<TimberBody> others) {
    this(body, face, face.flat(origin, along, across), origin, along, across, gap, others);
  }

  /** Where along the line the face reaches so far out, as low and high; empty if nowhere. */
  List<Double> breadth(double out) {
    FlatFace line =
        flat.where(spot -> spot.along() - out + Tolerance.RECKONING)
            .where(spot -> out - spot.along() + Tolerance.RECKONING);
    return line.corners().isEmpty()
        ? List.of()
        : List.of(line.least(FacePlace::across), line.most(FacePlace::across));
  }

  /** How long a leg may be that covers a stretch of the line, mm; 0 if the face begins later. */
  double room(double low, double high) {
    double room = Math.min(reach(low + Tolerance.RECKONING), reach(high - Tolerance.RECKONING));
    for (TimberBody other : others) {
      room = Math.min(room, clear(other, low, high, room));
    }
    return Math.max(0, room);
  }

  /** Whether a leg of a length that covers a stretch of the line has room, within a tolerance. */
  boolean hasRoom(double low, double high, double length, double tolerance) {
    return length
            <= Math.min(reach(low + Tolerance.RECKONING), reach(high - Tolerance.RECKONING))
                + tolerance
        && others.stream().allMatch(other -> length <= clear(other, low, high, length) + tolerance);
  }

  private double reach(double at) {
    FlatFace line = flat.onLine(at);
    boolean begins = !line.corners().isEmpty() && line.least(FacePlace::along) <= gap;
    return begins ? line.most(FacePlace::along) : 0;
  }

  /** How long a leg may be that another member does not meet, as far as it matters, mm. */
  private double clear(TimberBody other, double low, double high, double matters) {
    Span height = new Span(TOUCH, THICK);
    return new FaceCorridor(origin, along, across, face.outward(), new Span(low, high), height)
        .met(other.solid(), new Span(TOUCH, matters))
        .filter(met -> met.high() > TOUCH)
        .map(Span::low)
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What a leg of a length takes of the room, over a stretch of the line. */
  Solid taken(double low, double high, double length) {
    return new FlatAxes(origin, along, across)
        .over(new FacePlace(0, low), new FacePlace(length, high), face.outward().times(THICK));
  }

  /** How much timber a screw at a place on the face finds, mm. */
  double timber(FacePlace spot) {
    return body.through(at(spot), face.outward().times(-1));
  }

  /** A place on the face, in the room. */
  Vector3 at(FacePlace spot) {
    return origin.plus(along.times(spot.along())).plus(across.times(spot.across()));
  }
}
