package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;

/** A whole number. */
public final class CountKind implements Kind<Integer> {
  private final Range range;
  private final String things;

  /**
   * Counts within a range.
   *
   * @param range of what may be counted
   * @param things what is counted, for messages
   */
  public CountKind(Range range, String things) {
    this.range = range;
    this.things = things;
  }

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
  public ValueShape shape() {
    return new ValueShape.Bounded(range, true);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return "a whole number, " + range.words(1, things);
  }
}
