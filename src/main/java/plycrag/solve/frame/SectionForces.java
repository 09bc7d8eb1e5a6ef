package plycrag.solve.frame;

/**
 * What the part of a beam beyond a section does to the part before it, in the beam's own axes.
 *
 * @param normal along the beam, tension positive, N
 * @param shearY N
 * @param shearZ N
 * @param torsion N mm
 * @param momentY about y; positive stretches the side of +z, N mm
 * @param momentZ about z; positive stretches the side of -y, N mm
 */
public record SectionForces(
    double normal, double shearY, double shearZ, double torsion, double momentY, double momentZ) {}
