package plycrag.solve.setout;

/**
 * What stands in the way of a line at the place asked for.
 *
 * @param name of the member, the keep-out or the other line
 * @param shortfall how much of the required distance is missing, mm
 */
public record Blocker(String name, double shortfall) {}
