package plycrag.params;

/**
 * One plane of the climbing face.
 *
 * @param name printed before every mark on it
 * @param angle from vertical, degrees; positive leans out over the climber
 * @param length up the slope, mm
 * @param width across, mm
 */
public record FacetParameters(String name, double angle, double length, double width) {}
