package plycrag.solve.setout;

/**
 * A member that crosses the axis.
 *
 * @param name its mark
 * @param centre the middle of its breadth, mm
 * @param halfBreadth half of what it covers of the axis, mm
 */
public record CrossingMember(String name, double centre, double halfBreadth) {

  /** Where it keeps lines from that must stay so far from its sides. */
  public ForbiddenStretch keepout(double distance) {
    double reach = halfBreadth + distance;
    return new ForbiddenStretch(name, centre - reach, centre + reach);
  }
}
