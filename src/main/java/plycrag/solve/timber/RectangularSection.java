package plycrag.solve.timber;

/**
 * A rectangle of timber, bent about y over its depth and about z over its breadth.
 *
 * @param breadth b, mm
 * @param depth h, mm
 */
public record RectangularSection(double breadth, double depth) {
  /** mm². */
  public double area() {
    return breadth * depth;
  }

  /** Section modulus about y, mm³. */
  public double modulusY() {
    return breadth * depth * depth / 6;
  }

  /** Section modulus about z, mm³. */
  public double modulusZ() {
    return depth * breadth * breadth / 6;
  }

  /** Radius of gyration about y, mm. */
  public double radiusY() {
    return depth / Math.sqrt(12);
  }

  /** Radius of gyration about z, mm. */
  public double radiusZ() {
    return breadth / Math.sqrt(12);
  }
}
