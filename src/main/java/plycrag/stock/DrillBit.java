package plycrag.stock;

import plycrag.geometry.Tolerance;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/** The bits that are sold: every half millimetre, or every 64th of an inch (common practice). */
final class DrillBit {
  private static final double METRIC = 0.5;
  private static final double IMPERIAL = LengthUnit.IN.millimetres() / 64;

  private DrillBit() {}

  /** The least bit that is not below a diameter, in words. */
  static String atLeast(double diameter, Tape tape) {
    return tape.size(Tolerance.wholeUp(diameter / step(tape)) * step(tape));
  }

  /** The greatest bit that is not above a diameter, in words; empty for no hole. */
  static String atMost(double diameter, Tape tape) {
    return diameter > 0 ? tape.size(Tolerance.wholeDown(diameter / step(tape)) * step(tape)) : "";
  }

  private static double step(Tape tape) {
    return tape.unit() == LengthUnit.MM ? METRIC : IMPERIAL;
  }
}
