package plycrag.catalog;

/**
 * A size in which sheets are sold.
 *
 * @param name as a merchant says it, {@code 2440x1220}
 * @param length the longer side, mm
 * @param width the shorter side, mm
 * @param source where the size is published
 */
public record StockSize(String name, double length, double width, String source) {}
