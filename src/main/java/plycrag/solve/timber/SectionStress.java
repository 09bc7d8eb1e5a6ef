package plycrag.solve.timber;

/**
 * Stresses along the grain, N/mm², all positive.
 *
 * @param axial tension or compression
 * @param bendingY at the edge, of bending about y
 * @param bendingZ at the edge, of bending about z
 */
public record SectionStress(double axial, double bendingY, double bendingZ) {
  /** Of an axial force, N, and moments, N mm, of any sign. */
  public static SectionStress of(
      RectangularSection section, double axial, double momentY, double momentZ) {
    return new SectionStress(
        Math.abs(axial) / section.area(),
        Math.abs(momentY) / section.modulusY(),
        Math.abs(momentZ) / section.modulusZ());
  }
}
