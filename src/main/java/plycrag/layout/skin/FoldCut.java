package plycrag.layout.skin;

import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.wall.Fold;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.Wall;

/**
 * How sheets and timber end at one side of a facet. Whatever is mitred ends in the plane that
 * halves the fold. Square cuts end at the fold line where there is room behind it, and otherwise
 * stop short, so that what lies behind does not meet. Where faces are turned sharply toward each
 * other there is so much room behind that timber stays square, flush with the sheet's back edge: it
 * would have to be ripped almost to a point, and no screw would stay in it.
 *
 * @param bevel of the plane that halves the fold, from square, degrees; 0 at a side without a fold
 * @param mitred whether cuts follow that plane
 * @param thickness of the sheets, mm
 * @param depth from the climbing face to the back of the frame, mm
 * @param crowded whether timber there has no room for the sheet's screws, so that more must stand
 *     beside it for them
 */
public record FoldCut(
    double bevel, boolean mitred, double thickness, double depth, boolean crowded) {
  /** Timber is ripped no further from square (a choice, no source), degrees. */
  private static final double STEEPEST_RIP = 30;

  /** The cut at a side of a facet; a square one flush with it if there is no fold. */
  public static FoldCut at(Optional<Fold> fold, Wall wall) {
    double thickness = wall.sheet().thickness();
    FoldCut cut =
        new FoldCut(
            fold.map(Fold::bevel).orElse(0.0),
            wall.foldEdges() == FoldEdges.MITRED,
            thickness,
            thickness + wall.frame().depth(),
            false);
    return fold.isEmpty() || cut.hasRoom(wall)
        ? cut
        : new FoldCut(cut.bevel, cut.mitred, cut.thickness, cut.depth, true);
  }

  /** The cut at a side that meets nothing. */
  public static FoldCut none() {
    return new FoldCut(0, true, 0, 0, false);
  }

  /**
   * Whether a screw keeps off the sheet's edge and off both sides of the timber, all the way in.
   */
  private boolean hasRoom(Wall wall) {
    double within = Math.min(wall.screws().length() - thickness, wall.frame().depth()) * slope();
    double inner = timber() - breadth(wall.frame().breadth()) + Math.max(0, within);
    double outer = timber() + Math.min(0, within);
    double toSide = wall.clearance().screw().toMemberEdge();
    double most =
        Math.min(
            Math.min(front(), back()) - wall.clearance().screw().toSheetEdge(), outer - toSide);
    return most - inner - toSide >= wall.tape().unit().markingGrid();
  }

  /** How far the sheet's front face goes beyond the facet's side, mm. */
  double front() {
    return mitred ? 0 : stopped(thickness);
  }

  /** How far the sheet's back face does, mm. */
  double back() {
    return sheetOrTimber(thickness, thickness);
  }

  /** How far the sheet's blank does, mm. */
  double blank() {
    return Math.max(front(), back());
  }

  /** How far timber does against the sheet's back, mm. */
  public double timber() {
    return sheetOrTimber(thickness, depth);
  }

  /** Whether timber would follow the plane that halves the fold, were it mitred. */
  public static boolean canRip(Fold fold) {
    return Tolerance.atMost(fold.bevel(), STEEPEST_RIP);
  }

  /** How far faces may be turned toward each other for that, degrees. */
  public static double greatestTurn() {
    return 2 * STEEPEST_RIP;
  }

  /** Whether timber follows the plane that halves the fold. */
  public boolean ripsTimber() {
    return mitred && Tolerance.atMost(bevel, STEEPEST_RIP);
  }

  /** How much further timber goes for each millimetre behind that. */
  public double slope() {
    return ripsTimber() ? Trig.tan(bevel) : 0;
  }

  private double sheetOrTimber(double behind, double whole) {
    return mitred ? behind * Trig.tan(bevel) : stopped(whole);
  }

  private double stopped(double whole) {
    return Math.min(0, whole * Trig.tan(bevel));
  }

  /** What timber that lies against that plane takes of the sheet's back, mm. */
  public double breadth(double breadth) {
    return ripsTimber() ? breadth / Trig.cos(bevel) : breadth;
  }

  /** How far such timber reaches behind the sheet, mm. */
  public double depth(double section) {
    return ripsTimber() ? section * Trig.cos(bevel) : section;
  }
}
