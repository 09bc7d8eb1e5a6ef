package plycrag.catalog;

/**
 * A bolt as it is sold.
 *
 * @param diameter of the thread, mm
 * @param length under the head, mm
 * @param source where the sizes are published
 */
public record Bolt(double diameter, double length, String source) {}
