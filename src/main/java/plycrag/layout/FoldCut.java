package plycrag.layout;

import java.util.Optional;
import plycrag.geometry.Trig;
import plycrag.params.WallParameters.FoldEdges;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Wall;

/**
 * How sheets and timber end at one edge of a facet. Whatever is mitred ends in the plane that
 * halves the fold. Square cuts end at the fold line where there is room behind it, and otherwise
 * stop short, so that what lies behind does not meet.
 *
 * @param bevel of the plane that halves the fold, from square, degrees; 0 at an edge without a fold
 * @param mitred whether cuts follow that plane
 * @param thickness of the sheets, mm
 * @param depth from the climbing face to the back of the frame, mm
 */
record FoldCut(double bevel, boolean mitred, double thickness, double depth) {

  /** The cut at a facet's edge; a square one flush with it if there is no fold. */
  private static FoldCut at(Optional<Fold> fold, Wall wall) {
    double thickness = wall.sheet().thickness();
    return new FoldCut(
        fold.map(Fold::bevel).orElse(0.0),
        wall.foldEdges() == FoldEdges.MITRED,
        thickness,
        thickness + wall.frame().depth());
  }

  /** The cut at a facet's lower edge. */
  static FoldCut below(Facet facet, Wall wall) {
    return at(facet.below(), wall);
  }

  /** The cut at a facet's upper edge. */
  static FoldCut above(Facet facet, Wall wall) {
    return at(facet.above(), wall);
  }

  /** How far the sheet's front face goes beyond the facet's edge, mm. */
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

  /**
   * How far timber does.
   *
   * @param behind the climbing face, mm
   */
  double timber(double behind) {
    return sheetOrTimber(behind, depth);
  }

  private double sheetOrTimber(double behind, double whole) {
    return mitred ? behind * Trig.tan(bevel) : stopped(whole);
  }

  private double stopped(double whole) {
    return Math.min(0, whole * Trig.tan(bevel));
  }

  /** What a plate that lies against that plane takes of the sheet's back, mm. */
  double plateBreadth(double breadth) {
    return mitred ? breadth / Trig.cos(bevel) : breadth;
  }

  /** How far such a plate reaches behind the sheet, mm. */
  double plateDepth(double section) {
    return mitred ? section * Trig.cos(bevel) : section;
  }
}
