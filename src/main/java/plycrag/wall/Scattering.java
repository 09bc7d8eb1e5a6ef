package plycrag.wall;

/**
 * How inserts are scattered.
 *
 * @param spacing least distance at a facet's lower edge, mm
 * @param topSpacing the same at its upper edge, mm
 * @param seed another one makes another pattern
 */
public record Scattering(double spacing, double topSpacing, int seed) {

  /** Least distance anywhere, mm. */
  public double least() {
    return Math.min(spacing, topSpacing);
  }
}
