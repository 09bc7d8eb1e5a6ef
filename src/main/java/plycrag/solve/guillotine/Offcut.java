package plycrag.solve.guillotine;

/**
 * A rectangle that is left over.
 *
 * @param x of its lower left corner from the sheet's, mm
 * @param y of its lower left corner from the sheet's, mm
 * @param width along x, mm
 * @param height along y, mm
 */
public record Offcut(double x, double y, double width, double height) implements Part {}
