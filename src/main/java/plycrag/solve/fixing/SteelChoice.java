package plycrag.solve.fixing;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.Solid;

/**
 * What of the catalogue holds a joint.
 *
 * @param fit empty if nothing does
 * @param faces on how many sides of the timber it can lie; 1 or 2
 * @param room what there is room for; empty where no two faces take a leg each
 * @param taken where its legs lie in the room if they can lie nowhere else; else nothing
 * @param closed the angle of the widest corner where all are too sharp for a bracket, degrees
 */
public record SteelChoice(
    Optional<SteelFit> fit,
    int faces,
    Optional<Room> room,
    List<Solid> taken,
    Optional<Double> closed) {
  /** Copies the bodies. */
  public SteelChoice {
    taken = List.copyOf(taken);
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
