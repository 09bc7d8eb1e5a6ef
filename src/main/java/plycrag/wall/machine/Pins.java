package plycrag.wall.machine;

/**
 * Registration pins, which stand in the board and go through a sheet that is worked on both faces.
 *
 * @param diameter mm
 * @param depth into the board, mm
 */
public record Pins(double diameter, double depth) {}
