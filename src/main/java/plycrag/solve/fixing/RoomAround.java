package plycrag.solve.fixing;

import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;

/**
 * What is around a gusset: the bodies that reach into a box seen along the room's y.
 *
 * @param forGood what the gusset keeps out of
 * @param inTheMaking what a driver at its screws keeps out of; bolts of holds come later
 */
public record RoomAround(
    Function<Envelope, List<Solid>> forGood, Function<Envelope, List<Solid>> inTheMaking) {}
