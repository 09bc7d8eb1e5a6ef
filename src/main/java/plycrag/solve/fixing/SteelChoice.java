package plycrag.solve.fixing;

import java.util.List;
import java.util.Optional;

/**
 * What of the catalogue holds a joint.
 *
 * @param fit empty if nothing does
 * @param places where each piece of it lies; none if nothing does, and of what only its breadth is
 *     known
 * @param room what there is room for; empty where no two faces take a leg each
 * @param closed the angle of the widest corner where all are too sharp for a bracket, degrees
 */
public record SteelChoice(
    Optional<SteelFit> fit, List<SteelPlace> places, Optional<Room> room, Optional<Double> closed) {
  /** Copies the places. */
  public SteelChoice {
    places = List.copyOf(places);
  }

  /** How many pieces of it; 1 at least. */
  public int count() {
    return Math.max(1, places.size());
  }

  /**
   * What there is room for.
   *
   * @param breadth of the faces along the bend, mm
   * @param leg how long each leg may be, mm
   * @param diameter of the thickest screws that keep their distance from both sides in one line and
   *     go in far enough without coming out, mm
   * @param first from the bend to the first of them at least, mm
   * @param screws how many of them find room in both legs
   */
  public record Room(double breadth, double leg, double diameter, double first, int screws) {}
}
