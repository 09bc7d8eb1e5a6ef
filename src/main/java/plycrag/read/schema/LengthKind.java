package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthText;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/**
 * A length, or a length per time: a bare number in the file's unit, or a text with a unit.
 *
 * @param range mm, or mm per that time
 * @param per what follows the unit in a text, {@code /min}, {@code /s2} or nothing
 */
public record LengthKind(Range range, String per) implements Kind<Double> {

  /** A length within a range in millimetres. */
  public static LengthKind length(double least, double greatest) {
    return new LengthKind(new Range(least, greatest), "");
  }

  /** A feed within a range in mm/min. */
  public static LengthKind feed(double least, double greatest) {
    return new LengthKind(new Range(least, greatest), "/min");
  }

  /** An acceleration within a range in mm/s². */
  public static LengthKind acceleration(double least, double greatest) {
    return new LengthKind(new Range(least, greatest), "/s2");
  }

  @Override
  public Optional<Double> read(Located value, Context context) {
    if (value.value() instanceof Number number) {
      return bare(number.doubleValue(), value, context);
    }
    if (value.value() instanceof String text) {
      return withUnit(text.strip(), value, context);
    }
    return refuseKind(value, context);
  }

  @Override
  public ValueShape shape() {
    return new ValueShape.Length(range, per);
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return units.stream()
        .map(unit -> range.words(unit.millimetres(), unit.word() + per))
        .collect(Collectors.joining(" / "));
  }

  private Optional<Double> bare(double number, Located value, Context context) {
    if (!Double.isFinite(number)) {
      return context.refuse(value, "this number is not finite", mayStand(context));
    }
    return context
        .unit()
        .flatMap(unit -> inRange(LengthText.millimetres(number, unit), value, context));
  }

  private Optional<Double> withUnit(String text, Located value, Context context) {
    if (!text.endsWith(per)) {
      return context.refuse(
          value,
          Printable.quoted(text) + " does not end with " + per,
          "a text such as 600 mm" + per + " or 24 in" + per + " is allowed");
    }
    LengthText length = LengthText.parse(text.substring(0, text.length() - per.length()));
    if (length instanceof LengthText.Fault fault) {
      return context.refuse(value, fault.wrong(), fault.allowed());
    }
    return inRange(((LengthText.Value) length).millimetres(), value, context);
  }

  private Optional<Double> inRange(double length, Located value, Context context) {
    LengthUnit unit = context.shownUnit();
    return range.holds(length)
        ? Optional.of(length)
        : context.refuse(
            value,
            range.complaint(length, unit.millimetres(), unit.word() + per),
            mayStand(context));
  }
}
