package plycrag.layout;

/**
 * Where two rows or two columns of pieces meet, all the way through the facet.
 *
 * @param axis along which it runs
 * @param middle of the gap, on the other axis, mm
 * @param gap its width, mm
 */
public record Seam(Axis axis, double middle, double gap) {}
