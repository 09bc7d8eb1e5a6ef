package plycrag.solve.fixing;

import java.util.List;
import java.util.stream.Stream;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Surface;
import plycrag.geometry.Vector3;

/**
 * Where a bracket, a strap or a hinge lies, in the room.
 *
 * @param middle of the line where its legs meet, on the timber
 * @param outward of length one: off a strap's face; out of the corner of what is bent, halving it
 * @param low its outline at one side: the corner, round one leg, the inner corner, round the other
 * @param high the same at the other side
 * @param legs both with the heads of their screws
 * @param screws from under their heads, first those of the first member
 */
public record SteelPlace(
    Vector3 middle,
    Vector3 outward,
    List<Vector3> low,
    List<Vector3> high,
    List<Solid> legs,
    List<Rod> screws) {
  /** Screws that come no nearer do not meet, however a drill wanders, mm. */
  public static final double APART = 1;

  /** Copies the lists. */
  public SteelPlace {
    low = List.copyOf(low);
    high = List.copyOf(high);
    legs = List.copyOf(legs);
    screws = List.copyOf(screws);
  }

  /** The steel alone. */
  public Surface surface() {
    return Surface.through(List.of(low, high));
  }

  /** Both legs of the steel alone. */
  public List<Solid> plates() {
    return List.of(plate(List.of(0, 1, 2, 3)), plate(List.of(0, 3, 4, 5)));
  }

  private Solid plate(List<Integer> corners) {
    return new Solid(
        corners.stream().map(low::get).toList(), corners.stream().map(high::get).toList());
  }

  /** All that it takes of the room, with its screws. */
  public List<Solid> bodies() {
    return Stream.concat(legs.stream(), screws.stream().map(Rod::body)).toList();
  }

  /** Whether two would lie in each other's way, or their screws meet. */
  boolean meets(SteelPlace other) {
    List<Solid> others = other.bodies();
    return bodies().stream()
        .anyMatch(one -> others.stream().anyMatch(body -> one.overlapsByMoreThan(-APART, body)));
  }
}
