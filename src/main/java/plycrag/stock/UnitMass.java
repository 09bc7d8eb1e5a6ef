package plycrag.stock;

/**
 * What one of a thing weighs where no price list says it.
 *
 * @param volume m³
 * @param density kg/m³
 */
public record UnitMass(double volume, double density) {
  /** Softwood of strength class C24, mean, kg/m³ (EN 338:2016, table 1). */
  public static final double TIMBER = 420;

  /**
   * Birch plywood, mean, kg/m³ (Handbook of Finnish Plywood; from memory). Softwood plywood is
   * lighter, so that no load comes out heavier than is said here.
   */
  public static final double PLYWOOD = 680;

  private static final double CUBIC_METRE = 1e9;

  /** A length of timber, sides in mm. */
  static UnitMass timber(double breadth, double depth, double length) {
    return new UnitMass(breadth * depth * length / CUBIC_METRE, TIMBER);
  }

  /** A sheet of plywood, sides in mm. */
  static UnitMass plywood(double length, double width, double thickness) {
    return new UnitMass(length * width * thickness / CUBIC_METRE, PLYWOOD);
  }

  /** kg. */
  public double mass() {
    return volume * density;
  }
}
