package plycrag.check.standing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.standing.RunAtAngle.Body;

/**
 * What goes furthest beyond something that ends the room.
 *
 * @param body that does
 * @param by how far, mm
 * @param at where in the room
 */
record Beyond(Body body, double by, Vector3 at) {

  /**
   * Of some bodies; empty if none goes beyond.
   *
   * @param over how far beyond a place in the room lies, mm
   */
  static Optional<Beyond> furthest(List<Body> bodies, ToDoubleFunction<Vector3> over) {
    return bodies.stream()
        .flatMap(body -> corners(body).map(at -> new Beyond(body, over.applyAsDouble(at), at)))
        .filter(beyond -> beyond.by() > Tolerance.TOUCH)
        .max(Comparator.comparingDouble(Beyond::by));
  }

  private static Stream<Vector3> corners(Body body) {
    return Stream.concat(body.solid().near().stream(), body.solid().far().stream());
  }
}
