package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/** A straight box without end along one way, beside a face of timber. */
final class FaceCorridor {
  private final Vector3 origin;
  private final Vector3 along;
  private final Vector3 across;
  private final Vector3 outward;
  private final Span breadth;
  private final Span height;

  /**
   * @param origin from which all is measured
   * @param along the way without end, of length one
   * @param across the way of its breadth, of length one
   * @param outward square to the face, of length one
   * @param breadth where it begins and ends across
   * @param height where it begins and ends outward
   */
  FaceCorridor(
      Vector3 origin, Vector3 along, Vector3 across, Vector3 outward, Span breadth, Span height) {
    this.origin = origin;
    this.along = along;
    this.across = across;
    this.outward = outward;
    this.breadth = breadth;
    this.height = height;
  }

  /** The part of its length in which a body reaches into it; empty if it does not. */
  Optional<Span> met(Solid body) {
    return met(body, new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }

  /** The same, but empty for a body that lies wholly before or beyond what is asked for. */
  Optional<Span> met(Solid body, Span asked) {
    return isBeside(body, asked) ? Optional.empty() : inside(body);
  }

  /** Whether all of a body lies on one side of it, as most timber around a joint does. */
  private boolean isBeside(Solid body, Span asked) {
    boolean below = true;
    boolean above = true;
    boolean left = true;
    boolean right = true;
    boolean before = true;
    boolean beyond = true;
    for (List<Vector3> face : List.of(body.near(), body.far())) {
      for (Vector3 corner : face) {
        Vector3 from = corner.minus(origin);
        double out = from.dot(outward);
        double aside = from.dot(across);
        below &= out - height.low() < 0;
        above &= height.high() - out < 0;
        left &= Tolerance.atMost(aside, breadth.low());
        right &= Tolerance.atLeast(aside, breadth.high());
        before &= from.dot(along) < asked.low();
        beyond &= from.dot(along) > asked.high();
      }
    }
    return below || above || left || right || before || beyond;
  }

  private Optional<Span> inside(Solid body) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Vector3> face : body.faces().toList()) {
      List<Vector3> part = face.stream().map(corner -> corner.minus(origin)).toList();
      part = where(part, place -> place.dot(across) - breadth.low() - Tolerance.RECKONING);
      part = where(part, place -> breadth.high() - place.dot(across) - Tolerance.RECKONING);
      part = where(part, place -> place.dot(outward) - height.low());
      part = where(part, place -> height.high() - place.dot(outward));
      for (Vector3 place : part) {
        low = Math.min(low, place.dot(along));
        high = Math.max(high, place.dot(along));
      }
    }
    return low <= high ? Optional.of(new Span(low, high)) : Optional.empty();
  }

  private static List<Vector3> where(List<Vector3> corners, ToDoubleFunction<Vector3> function) {
    List<Vector3> kept = new ArrayList<>();
    for (int at = 0; at < corners.size(); at++) {
      Vector3 from = corners.get(at);
      Vector3 to = corners.get((at + 1) % corners.size());
      double one = function.applyAsDouble(from);
      double other = function.applyAsDouble(to);
      if (one >= 0) {
        kept.add(from);
      }
      if (one * other < 0) {
        kept.add(from.plus(to.minus(from).times(one / (one - other))));
      }
    }
    return kept;
  }
}
