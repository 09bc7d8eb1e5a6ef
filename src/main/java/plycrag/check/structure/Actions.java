package plycrag.check.structure;

import plycrag.solve.frame.SectionForces;

/**
 * What goes on in a section, N and N mm, in the axes of EN 1995-1-1: y is the axis of bending over
 * its greater side, z over the smaller.
 *
 * @param normal tension positive
 * @param shear along both sides together
 * @param torsion about the grain
 * @param momentY over the greater side
 * @param momentZ over the smaller side
 */
record Actions(double normal, double shear, double torsion, double momentY, double momentZ) {
  /**
   * Of forces in a frame's axes, whose y lies along the member's breadth.
   *
   * @param isFlat whether its breadth is its greater side
   */
  static Actions of(SectionForces forces, boolean isFlat) {
    double shear = Math.sqrt(forces.shearY() * forces.shearY() + forces.shearZ() * forces.shearZ());
    return new Actions(
        forces.normal(),
        shear,
        forces.torsion(),
        isFlat ? forces.momentZ() : forces.momentY(),
        isFlat ? forces.momentY() : forces.momentZ());
  }
}
