package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/**
 * A bare number.
 *
 * @param range in the unit
 * @param unit what is counted, for messages
 */
public record NumberKind(Range range, String unit) implements Kind<Double> {

  @Override
  public Optional<Double> read(Located value, Context context) {
    if (!(value.value() instanceof Number given)) {
      return refuseKind(value, context);
    }
    double number = given.doubleValue();
    if (!Double.isFinite(number)) {
      return context.refuse(value, "this number is not finite", mayStand(context));
    }
    return range.holds(number)
        ? Optional.of(number)
        : context.refuse(value, range.complaint(number, 1, unit), mayStand(context));
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Bounded(range, false);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return range.words(1, unit);
  }
}
