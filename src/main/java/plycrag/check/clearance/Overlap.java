package plycrag.check.clearance;

import java.util.Optional;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * Two members that take the same space.
 *
 * @param depth how far one would have to move at least, mm
 */
record Overlap(StandingMember one, StandingMember other, double depth) {
  /** Nothing reaches further into something else than this, mm. */
  private static final double FAR = 10_000;

  /** Halvings of that down to less than a micrometre. */
  private static final int HALVINGS = 34;

  /** Of two members; empty if they do not, or touch. */
  static Optional<Overlap> of(StandingMember one, StandingMember other) {
    return one.solid().overlapsByMoreThan(Tolerance.TOUCH, other.solid())
        ? Optional.of(new Overlap(one, other, one.solid().overlap(other.solid())))
        : Optional.empty();
  }

  /** How far the other one would have to move some way to be clear, mm. */
  double apart(Vector3 way) {
    double low = 0;
    double high = FAR;
    for (int at = 0; at < HALVINGS; at++) {
      double middle = (low + high) / 2;
      Solid moved = other.solid().mapped(corner -> corner.plus(way.times(middle)));
      if (one.solid().overlapsByMoreThan(Tolerance.TOUCH, moved)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
