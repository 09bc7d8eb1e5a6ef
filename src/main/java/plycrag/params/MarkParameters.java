package plycrag.params;

/**
 * How pieces are marked by a machine.
 *
 * @param height of capitals, mm
 * @param depth below the face that lies up, mm
 */
public record MarkParameters(double height, double depth) {}
