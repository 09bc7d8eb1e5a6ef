package plycrag.solve.frame;

import plycrag.geometry.Trig;

/**
 * What a beam's section and material resist with. Its axes y and z are the beam's own.
 *
 * @param elasticity modulus of elasticity along the beam, N/mm²
 * @param shearModulus N/mm²
 * @param area mm²
 * @param inertiaY second moment of area for bending about y, mm⁴
 * @param inertiaZ the same about z, mm⁴
 * @param torsion torsion constant, mm⁴
 * @param shearAreaY area that resists shear along y, mm²; infinite where shear bends nothing
 * @param shearAreaZ the same along z, mm²
 */
public record BeamSection(
    double elasticity,
    double shearModulus,
    double area,
    double inertiaY,
    double inertiaZ,
    double torsion,
    double shearAreaY,
    double shearAreaZ) {
  /** What the terms after this one add up to is below 2e-11 of the whole. */
  private static final int LAST_TERM = 199;

  private static final double PI_TO_THE_FIFTH = Math.PI * Math.PI * Math.PI * Math.PI * Math.PI;

  /** Refuses what resists nothing: a beam that does not bend or turn has no such freedom. */
  public BeamSection {
    for (double one :
        new double[] {
          elasticity, shearModulus, area, inertiaY, inertiaZ, torsion, shearAreaY, shearAreaZ
        }) {
      if (!(one > 0)) {
        throw new IllegalArgumentException("a section resists with more than nothing: " + one);
      }
    }
  }

  /** A section that shear does not bend; units as in the record. */
  public static BeamSection bending(
      double elasticity,
      double shearModulus,
      double area,
      double inertiaY,
      double inertiaZ,
      double torsion) {
    double none = Double.POSITIVE_INFINITY;
    return new BeamSection(elasticity, shearModulus, area, inertiaY, inertiaZ, torsion, none, none);
  }

  /**
   * A solid rectangle that shear does not bend.
   *
   * @param alongY its side along the beam's axis y, mm
   * @param alongZ its side along z, mm
   * @param elasticity N/mm²
   * @param shearModulus N/mm²
   */
  public static BeamSection rectangle(
      double alongY, double alongZ, double elasticity, double shearModulus) {
    return bending(
        elasticity,
        shearModulus,
        alongY * alongZ,
        alongY * alongZ * alongZ * alongZ / 12,
        alongZ * alongY * alongY * alongY / 12,
        torsion(Math.max(alongY, alongZ), Math.min(alongY, alongZ)));
  }

  /** The same section that shear bends too, over so much of its area: 5/6 for a rectangle. */
  public BeamSection shearing(double part) {
    return new BeamSection(
        elasticity, shearModulus, area, inertiaY, inertiaZ, torsion, part * area, part * area);
  }

  /** Saint-Venant's series: h b³ (1/3 − 64 b / (π⁵ h) Σ tanh(n π h / 2b) / n⁵), n odd. */
  private static double torsion(double depth, double breadth) {
    double sum = 0;
    for (int n = LAST_TERM; n > 0; n -= 2) {
      double odd = n;
      sum += Trig.hyperbolicTangent(odd * Math.PI * depth / (2 * breadth)) / fifth(odd);
    }
    return depth
        * breadth
        * breadth
        * breadth
        * (1.0 / 3 - 64 * breadth / (PI_TO_THE_FIFTH * depth) * sum);
  }

  private static double fifth(double odd) {
    return odd * odd * odd * odd * odd;
  }
}
