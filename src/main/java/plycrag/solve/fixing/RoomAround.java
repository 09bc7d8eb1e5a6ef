package plycrag.solve.fixing;

import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;

/**
 * What is around a gusset: the bodies that reach into a box seen along the room's y.
 *
 * @param forGood what the gusset keeps out of
 * @param inTheMaking what a driver at its screws keeps out of; bolts of holds come later
 * @param inTimber what its screws keep off, and it itself where that stands out
 */
public record RoomAround(
    Function<Envelope, List<Solid>> forGood,
    Function<Envelope, List<Solid>> inTheMaking,
    Function<Envelope, List<Solid>> inTimber) {

  /** Nothing. */
  public static final RoomAround EMPTY = new RoomAround(box -> List.of(), box -> List.of());

  /** The same where nothing is in the timber yet. */
  public RoomAround(
      Function<Envelope, List<Solid>> forGood, Function<Envelope, List<Solid>> inTheMaking) {
    this(forGood, inTheMaking, box -> List.of());
  }

  /** Whether a gusset meets no head, and its screws nothing in the timber. */
  boolean isFree(GussetFit fit) {
    return isFree(fit.body(), Tolerance.MARKED)
        && fit.rods().stream().map(Rod::body).allMatch(one -> isFree(one, -SteelPlace.APART));
  }

  private boolean isFree(Solid one, double shared) {
    return inTimber.apply(one.elevation()).stream()
        .noneMatch(other -> one.overlapsByMoreThan(shared, other));
  }
}
