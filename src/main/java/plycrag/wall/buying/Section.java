package plycrag.wall.buying;

/**
 * A section of timber.
 *
 * @param breadth the side against the sheet, mm
 * @param depth the other side, mm
 */
public record Section(double breadth, double depth) {}
