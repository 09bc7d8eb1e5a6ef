package plycrag.layout.fixing;

import java.util.Optional;

/**
 * What of the catalogue holds a joint.
 *
 * @param fit empty if nothing does
 * @param faces on how many sides of the timber it can lie; 1 or 2
 * @param room what there is room for; empty where no two faces take a leg each
 */
public record SteelChoice(Optional<SteelFit> fit, int faces, Optional<Room> room) {

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
