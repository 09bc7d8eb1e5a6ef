package plycrag.wall.machine;

import java.util.List;
import java.util.OptionalInt;

/**
 * How pieces are laid on stock sheets and cut from them.
 *
 * @param cutWith what cuts them
 * @param gap that must stay between two pieces for it, mm
 * @param margin along the edges of a sheet that no piece may lie on, mm
 * @param grain whether it must run on every piece as the facet's lay has it
 * @param faceUp which face lies up on the machine
 * @param others sheets that can be had beside those of {@code [sheet]}
 */
public record SheetCuttingRules(
    CutWith cutWith, double gap, double margin, Grain grain, FaceUp faceUp, List<Kind> others) {
  /** Copies the kinds. */
  public SheetCuttingRules {
    others = List.copyOf(others);
  }

  /** What cuts the pieces from the sheets. */
  public enum CutWith {
    /** A saw that cuts right across. */
    SAW,
    /** A router's bit. */
    ROUTER
  }

  /** What becomes of the face grain. */
  public enum Grain {
    /** It runs on every piece as whole sheets have it on that facet. */
    KEPT,
    /** It may run either way. */
    FREE
  }

  /** Which face of the sheets lies up when they are drilled. */
  public enum FaceUp {
    /** The climbing side. */
    FRONT,
    /** The frame side. */
    BACK
  }

  /**
   * Sheets of another size, or sheets at hand.
   *
   * @param length along the same grain as the longer side of {@code [sheet]}, mm
   * @param width across it, mm
   * @param price in parts of that sheet's; 0 at hand
   * @param count how many there are, if they are counted
   */
  public record Kind(double length, double width, double price, OptionalInt count) {}
}
