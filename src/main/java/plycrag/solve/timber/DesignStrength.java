package plycrag.solve.timber;

/**
 * What a section of timber bears, N/mm². Depth helps bending about each axis by the size that is
 * bent, and tension by the greater side; nothing else.
 *
 * @param bendingY f_m,y,d
 * @param bendingZ f_m,z,d
 * @param tension f_t,0,d
 * @param compression f_c,0,d
 * @param across f_c,90,d
 * @param shear f_v,d
 */
public record DesignStrength(
    double bendingY,
    double bendingZ,
    double tension,
    double compression,
    double across,
    double shear) {

  /** Of timber in a section. */
  public static DesignStrength of(
      TimberStrength strength, RectangularSection section, DesignBasis basis) {
    TimberKind kind = strength.kind();
    double greater = Math.max(section.breadth(), section.depth());
    return new DesignStrength(
        basis.of(strength.bending()) * kind.depthFactor(section.depth()),
        basis.of(strength.bending()) * kind.depthFactor(section.breadth()),
        basis.of(strength.tension()) * kind.depthFactor(greater),
        basis.of(strength.compression()),
        basis.of(strength.across()),
        basis.of(strength.shear()));
  }
}
