package plycrag.drawing.room;

import plycrag.geometry.Tolerance;
import plycrag.layout.frame.Member;
import plycrag.units.Decimal;
import plycrag.wall.Fold;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.Wall;

/** Says how a saw is set for what meets at a fold. */
final class SawWords {
  private SawWords() {}

  /** {@code 22.5°}. */
  static String degrees(double angle) {
    return Decimal.of(angle, 1) + "°";
  }

  /** How the two sheets' edges at a fold are cut. */
  static String sheetEdges(Wall wall, Fold fold) {
    double bevel = Math.abs(fold.bevel());
    if (wall.foldEdges() != FoldEdges.MITRED || bevel < Tolerance.SQUARE) {
      return "cut square.";
    }
    return "bevel both edges, the blade tilted "
        + degrees(bevel)
        + " from square, "
        + (fold.bevel() > 0 ? "longer at the back." : "longer at the front.");
  }

  /** How a member's sides are cut. */
  static String sides(Member member) {
    return member.hasSquareSides()
        ? member.mark() + ": sides square."
        : member.mark()
            + ": rip a side, the blade tilted "
            + degrees(Math.abs(member.rip()))
            + " from square.";
  }
}
