package plycrag.layout.nest;

/**
 * A sheet as bought, with the piece to be cut from it, as it lies on the machine.
 *
 * @param mark {@code S1}, {@code S2}, …
 * @param piece the mark of the piece
 * @param width along x, mm
 * @param height along y, mm
 * @param placement where the piece lies
 */
public record StockSheet(
    String mark, String piece, double width, double height, Placement placement) {}
