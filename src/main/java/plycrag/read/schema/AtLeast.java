package plycrag.read.schema;

import plycrag.read.text.Faults;
import plycrag.units.Decimal;
import plycrag.units.LengthUnit;

/** Two lengths, or two numbers, of one table of which one must not be less than the other. */
public final class AtLeast {
  private final Parameter<Double> greater;
  private final Parameter<Double> lesser;

  /**
   * Relates two keys.
   *
   * @param greater the one that must not be less
   * @param lesser the other
   */
  public AtLeast(Parameter<Double> greater, Parameter<Double> lesser) {
    this.greater = greater;
    this.lesser = lesser;
  }

  /** Reports the pair if it is the wrong way round, at a key that the file gives. */
  public void check(Values values, Faults faults) {
    if (values.isSound(greater) && values.isSound(lesser)) {
      double high = values.get(greater);
      double low = values.get(lesser);
      if (high < low) {
        report(values, high, low, faults);
      }
    }
  }

  private void report(Values values, double high, double low, Faults faults) {
    boolean atGreater = values.isGiven(greater);
    Parameter<Double> here = atGreater ? greater : lesser;
    String first = text(here, atGreater ? high : low, values.unit());
    String second = text(here, atGreater ? low : high, values.unit());
    faults.add(
        values.key(here),
        values.place(here),
        first
            + (atGreater
                ? " is less than " + values.key(lesser)
                : " is more than " + values.key(greater)),
        (atGreater ? "at least " : "at most ") + second + " is allowed");
  }

  private static String text(Parameter<Double> parameter, double value, LengthUnit unit) {
    return parameter.kind() instanceof NumberKind number
        ? Decimal.of(value, 4) + " " + number.unit()
        : length(value, unit);
  }

  private static String length(double length, LengthUnit unit) {
    return Decimal.of(length / unit.millimetres(), 4) + " " + unit.word();
  }
}
