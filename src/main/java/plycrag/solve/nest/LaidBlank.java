package plycrag.solve.nest;

/**
 * A blank on its sheet.
 *
 * @param mark the piece's mark
 * @param placement where it lies
 */
public record LaidBlank(String mark, Placement placement) {}
