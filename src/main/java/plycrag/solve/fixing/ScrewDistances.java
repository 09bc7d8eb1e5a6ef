package plycrag.solve.fixing;

import plycrag.geometry.Tolerance;

/**
 * The least distances of screws loaded across their length, in softwood of at most 420 kg/m³: EN
 * 1995-1-1:2004 Table 8.2, which by 8.7.1 holds for screws up to 6 mm; for thicker ones it is taken
 * too (common practice, no source). All in mm.
 */
final class ScrewDistances implements LeastDistances {
  /** What 8.3.1.4 makes of the distances between screws where steel lies on timber. */
  public static final double STEEL_ON_TIMBER = 0.7;

  /** From this diameter on more is asked where nothing is predrilled or an edge is loaded, mm. */
  private static final double THICK = 5;

  private final double diameter;
  private final boolean predrilled;

  /**
   * @param diameter of the thread, mm
   * @param predrilled whether the timber is
   */
  ScrewDistances(double diameter, boolean predrilled) {
    this.diameter = diameter;
    this.predrilled = predrilled;
  }

  @Override
  public double alongGrain(double cosine) {
    double diameters = predrilled ? 4 + cosine : 5 + (isThick() ? 7 : 5) * cosine;
    return diameters * diameter;
  }

  @Override
  public double acrossGrain(double sine) {
    return (predrilled ? 3 + sine : 5) * diameter;
  }

  @Override
  public double loadedEnd(double cosine) {
    return ((predrilled ? 7 : 10) + 5 * cosine) * diameter;
  }

  @Override
  public double loadedEdge(double sine) {
    double least = predrilled ? 3 : 5;
    double loaded = isThick() ? (predrilled ? 4 : 5) : 2;
    return (least + loaded * sine) * diameter;
  }

  private boolean isThick() {
    return Tolerance.atLeast(diameter, THICK);
  }
}
