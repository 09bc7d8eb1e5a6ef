package plycrag.params;

import plycrag.units.Decimal;
import plycrag.units.LengthUnit;

/**
 * Two lengths of one table of which one must not be less than the other.
 *
 * @param greater the one that must not be less
 * @param lesser the other
 */
record AtLeast(Parameter<Double> greater, Parameter<Double> lesser) {

  /** Reports the pair if it is the wrong way round, at a key that the file gives. */
  void check(Values values, Faults faults) {
    if (values.isSound(greater) && values.isSound(lesser)) {
      double high = values.get(greater);
      double low = values.get(lesser);
      if (high < low) {
        report(values, new Shown(values.unit(), high, low), faults);
      }
    }
  }

  private void report(Values values, Shown shown, Faults faults) {
    boolean atGreater = values.isGiven(greater);
    Parameter<Double> place = atGreater ? greater : lesser;
    faults.add(
        values.key(place),
        values.spot(place),
        atGreater
            ? shown.high() + " is less than " + values.key(lesser) + ", " + shown.low()
            : shown.low() + " is more than " + values.key(greater) + ", " + shown.high(),
        atGreater ? "at least as much is allowed" : "at most as much is allowed");
  }

  /** The two lengths as a message shows them. */
  private record Shown(LengthUnit unit, double highLength, double lowLength) {
    String high() {
      return text(highLength);
    }

    String low() {
      return text(lowLength);
    }

    private String text(double length) {
      return Decimal.of(length / unit.millimetres(), 4) + " " + unit.word();
    }
  }
}
