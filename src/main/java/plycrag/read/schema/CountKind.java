package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/**
 * A whole number.
 *
 * @param range of what may be counted
 * @param things what is counted, for messages
 */
public record CountKind(Range range, String things) implements Kind<Integer> {

  @Override
  public Optional<Integer> read(Located value, Context context) {
    if (!(value.value() instanceof Long number)) {
      return refuseKind(value, context);
    }
    return range.holds(number)
        ? Optional.of(Math.toIntExact(number))
        : context.refuse(value, range.complaint(number, 1, things), mayStand(context));
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a whole number, " + range.words(1, things);
  }
}
