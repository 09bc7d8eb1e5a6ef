package plycrag.machining;

import plycrag.units.Decimal;
import plycrag.units.LengthUnit;

/**
 * Lengths as the person at the machine reads them: in the unit of its programs, to a tenth of a
 * millimetre or a hundredth of an inch.
 *
 * @param unit of the programs
 */
record MachineLengths(LengthUnit unit) {

  /** The number alone. */
  String number(double millimetres) {
    return Decimal.of(millimetres / unit.millimetres(), decimals());
  }

  int decimals() {
    return unit == LengthUnit.MM ? 1 : 2;
  }

  /** The number with its unit. */
  String words(double millimetres) {
    return number(millimetres) + " " + word();
  }

  /** A length much smaller than what is set or measured, with its unit. */
  String fine(double millimetres) {
    return Decimal.of(millimetres / unit.millimetres(), decimals() + 2) + " " + word();
  }

  String word() {
    return unit == LengthUnit.MM ? "mm" : "in";
  }
}
