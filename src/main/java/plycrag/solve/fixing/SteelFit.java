package plycrag.solve.fixing;

import plycrag.catalog.FlatSteel;

/**
 * A bracket, a strap or a hinge with its screws, for one joint.
 *
 * @param steel what the catalogue has
 * @param angle to which it is bent, degrees: 90 as a bracket is sold, 180 for a flat strap
 * @param screws in both legs together
 * @param diameter of the screws, mm
 * @param length of the screws, mm
 */
public record SteelFit(FlatSteel steel, double angle, int screws, double diameter, double length) {

  /** How deep the screws go into the timber, mm, through what lies between, mm. */
  public double bite(double between) {
    return length - steel.legs().thickness() - between;
  }
}
