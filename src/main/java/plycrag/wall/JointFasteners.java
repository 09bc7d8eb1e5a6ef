package plycrag.wall;

/**
 * What holds the members of the frame together.
 *
 * @param bracketScrews in each bracket where one member ends on another
 * @param bolts through the plates at a fold
 * @param screws that join members side by side
 */
public record JointFasteners(int bracketScrews, Bolts bolts, JoiningScrews screws) {

  /**
   * The bolts through the plates at a fold.
   *
   * @param diameter mm
   * @param spacing greatest between them, mm
   */
  public record Bolts(double diameter, double spacing) {}

  /**
   * The screws that join members side by side.
   *
   * @param diameter mm
   * @param length mm
   * @param spacing greatest between them, mm
   */
  public record JoiningScrews(double diameter, double length, double spacing) {}
}
