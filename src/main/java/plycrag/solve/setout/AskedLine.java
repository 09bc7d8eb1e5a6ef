package plycrag.solve.setout;

/**
 * A column or a row that is asked for.
 *
 * @param name what to call it
 * @param wanted its place along the axis, mm; read to the nearest step of the marking grid, a half
 *     to the lower one
 */
public record AskedLine(String name, double wanted) {}
