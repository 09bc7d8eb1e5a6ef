package plycrag.wall;

import java.util.List;
import java.util.Optional;
import plycrag.catalog.FlatSteel;
import plycrag.catalog.SteelCatalog;

/**
 * What holds the members of the frame together.
 *
 * @param bracketScrews in each bracket where one member ends on another
 * @param bolts through the plates at a fold
 * @param screws that join members side by side
 * @param steel the brackets, straps and hinges that may be taken
 */
public record JointFasteners(int bracketScrews, Bolts bolts, JoiningScrews screws, Steel steel) {

  /**
   * The brackets, straps and hinges that may be taken.
   *
   * @param list the file with the user's own, if one is told
   * @param catalog those and all others
   */
  public record Steel(Optional<String> list, SteelCatalog catalog) {}

  /** The same with a user's own brackets, straps and hinges. */
  public JointFasteners preferring(List<FlatSteel> own) {
    return new JointFasteners(
        bracketScrews, bolts, screws, new Steel(steel.list(), new SteelCatalog(own)));
  }

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
