package plycrag.wall;

import java.util.Optional;

/**
 * What is cut into the back of the sheets round every insert's hole, so that flanges lie in it.
 *
 * @param diameter mm; wider than the flange
 * @param depth below the back, mm
 * @param asked the least thickness of a sheet that must remain under it, if the file gives it, mm
 */
public record Recess(double diameter, double depth, Optional<Double> asked) {
  /** Of a sheet's thickness, what a recess leaves at least (a choice, no source). */
  private static final double HALF = 0.5;

  /**
   * The least that must remain, mm.
   *
   * @param thickness of the sheet, mm
   */
  public double least(double thickness) {
    return asked.orElse(HALF * thickness);
  }
}
