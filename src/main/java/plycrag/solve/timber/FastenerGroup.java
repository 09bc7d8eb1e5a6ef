package plycrag.solve.timber;

import java.util.Comparator;
import java.util.List;

/**
 * A group of equal fasteners that turn about their middle together, by elastic distribution: each
 * takes its share of the forces, and of the moment by its distance over the sum of squares.
 */
public final class FastenerGroup {
  /**
   * A place or a force in the plane of the joint.
   *
   * @param x mm or N
   * @param y mm or N
   */
  public record Plane(double x, double y) {
    /** How long it is. */
    public double size() {
      return Math.sqrt(x * x + y * y);
    }
  }

  private final List<Plane> places;

  /** At places measured from their middle. */
  public FastenerGroup(List<Plane> places) {
    this.places = List.copyOf(places);
  }

  /** Σ r², mm². */
  public double squares() {
    return places.stream().mapToDouble(one -> one.x() * one.x() + one.y() * one.y()).sum();
  }

  /** The force on each, in order, of forces on the whole, N, and a moment from x to y, N mm. */
  public List<Plane> forces(Plane whole, double moment) {
    double turn = moment / squares();
    return places.stream()
        .map(
            one ->
                new Plane(
                    whole.x() / places.size() - turn * one.y(),
                    whole.y() / places.size() + turn * one.x()))
        .toList();
  }

  /** The greatest of them. */
  public Plane worst(Plane whole, double moment) {
    return forces(whole, moment).stream()
        .max(Comparator.comparingDouble(Plane::size))
        .orElseThrow();
  }
}
