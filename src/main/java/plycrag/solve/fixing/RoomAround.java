package plycrag.solve.fixing;

import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;

/**
 * What is around a gusset: the bodies that reach into a box seen along the room's y.
 *
 * @param forGood what the gusset keeps out of
 * @param inTheMaking what a driver at its screws keeps out of; bolts of holds come later
 * @param inTimber what its screws keep off
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

  /** Whether screws of a gusset meet nothing. */
  boolean isFree(GussetFit fit) {
    return fit.rods().stream()
        .map(Rod::body)
        .allMatch(
            screw ->
                inTimber.apply(screw.elevation()).stream()
                    .noneMatch(other -> screw.overlapsByMoreThan(-SteelPlace.APART, other)));
  }
}
