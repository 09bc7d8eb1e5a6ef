package plycrag.wall;

/**
 * The screws that hold the sheets to the frame.
 *
 * @param diameter of the thread, mm
 * @param length under the head, mm
 * @param predrilled whether the timber gets a pilot hole
 * @param edgeSpacing greatest, along the edges of a piece, mm
 * @param fieldSpacing greatest, elsewhere, mm
 */
public record Screws(
    double diameter, double length, boolean predrilled, double edgeSpacing, double fieldSpacing) {}
