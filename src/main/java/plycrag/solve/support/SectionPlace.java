package plycrag.solve.support;

/**
 * A place in a section across the wall, mm.
 *
 * @param y toward the climber
 * @param z above the floor
 */
public record SectionPlace(double y, double z) {}
