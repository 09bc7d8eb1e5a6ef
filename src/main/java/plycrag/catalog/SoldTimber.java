package plycrag.catalog;

/**
 * A section of timber that is sold under a name.
 *
 * @param name as a merchant says it, {@code 2x4}
 * @param breadth the smaller side as dressed and dried, mm
 * @param depth the greater side, mm
 * @param source where the sizes are published
 */
public record SoldTimber(String name, double breadth, double depth, String source) {}
