package plycrag.wall.machine;

/**
 * How pieces are marked by a machine.
 *
 * @param height of capitals, mm
 * @param depth below the face, mm
 * @param behind whether in the back, even where the front lies up for all else
 */
public record MarkEngraving(double height, double depth, boolean behind) {}
