package plycrag.solve.fixing;

/**
 * The least distances of bolts loaded across their length: EN 1995-1-1:2004 Table 8.4. A washer of
 * three diameters (10.4.3, from memory) reaches less far than any of them. All in mm.
 */
final class BoltDistances implements LeastDistances {
  /** To a loaded end at least, mm. */
  private static final double END = 80;

  private final double diameter;

  /**
   * @param diameter of the bolt, mm
   */
  BoltDistances(double diameter) {
    this.diameter = diameter;
  }

  @Override
  public double alongGrain(double cosine) {
    return (4 + cosine) * diameter;
  }

  @Override
  public double acrossGrain(double sine) {
    return 4 * diameter;
  }

  @Override
  public double loadedEnd(double cosine) {
    return Math.max(7 * diameter, END);
  }

  @Override
  public double loadedEdge(double sine) {
    return Math.max((2 + 2 * sine) * diameter, 3 * diameter);
  }
}
