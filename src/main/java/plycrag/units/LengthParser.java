package plycrag.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.units.LengthText.Fault;
import plycrag.units.LengthText.Value;

/** Takes a text for a length apart: a sign, then numbers with their units. */
final class LengthParser {
  private static final int LONGEST = 40;
  private static final Pattern PART =
      Pattern.compile(
          "\\G[\\s-]*(?<number>[0-9.,/]+(?:[ -]+[0-9.,/]+)*)"
              + "\\s*(?<unit>['\"]|[^0-9.,/\\s'\"-][^0-9\\s'\"]*|)\\s*");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(?<whole>[0-9]+)[ -]+)?(?<above>[0-9]+)/(?<below>0*[1-9][0-9]*)");

  /** The same as one expression without names, a sign before it left out. */
  static final String EXPRESSION = expression();

  private static final Map<String, BigDecimal> UNITS =
      Map.of(
          "mm", BigDecimal.ONE,
          "cm", BigDecimal.TEN,
          "m", new BigDecimal(1000),
          "in", new BigDecimal("25.4"),
          "\"", new BigDecimal("25.4"),
          "ft", new BigDecimal("304.8"),
          "'", new BigDecimal("304.8"));
  private static final String ALLOWED =
      "a number with mm, cm, m, in or ft is allowed, such as 2.4 m, 3/4 in or 8 ft 2 1/2 in";

  private LengthParser() {}

  private static String expression() {
    String number = "(?:[0-9]+(?:\\.[0-9]+)?|(?:[0-9]+[ -]+)?[0-9]+/0*[1-9][0-9]*)\\s*";
    String feet = number + "(?:ft|')[\\s-]*";
    return "(?:" + number + "(?:mm|cm|m|in|ft|'|\")|" + feet + number + "(?:in|\"))";
  }

  static LengthText parse(String text) {
    String stripped = text.strip();
    boolean negative = stripped.startsWith("-");
    String unsigned = negative ? stripped.substring(1).strip() : stripped;
    List<Part> parts = parts(unsigned);
    if (parts.isEmpty()) {
      return notANumber(text);
    }
    Optional<Fault> fault = parts.stream().flatMap(part -> part.fault().stream()).findFirst();
    if (fault.isPresent()) {
      return fault.get();
    }
    return canStandTogether(parts) ? new Value(sum(parts, negative)) : tooManyParts(text);
  }

  /** The parts of a text; none if it is not made of numbers and units from end to end. */
  private static List<Part> parts(String text) {
    List<Part> parts = new ArrayList<>();
    if (text.length() > LONGEST || text.startsWith("-")) {
      return parts;
    }
    Matcher matcher = PART.matcher(text);
    int end = 0;
    while (matcher.find()) {
      parts.add(new Part(matcher.group("number"), matcher.group("unit")));
      end = matcher.end();
    }
    return end == text.length() ? parts : List.of();
  }

  private static boolean canStandTogether(List<Part> parts) {
    return parts.size() == 1
        || (parts.size() == 2 && parts.get(0).isIn("ft", "'") && parts.get(1).isIn("in", "\""));
  }

  private static double sum(List<Part> parts, boolean negative) {
    BigDecimal sum = parts.stream().map(Part::millimetres).reduce(BigDecimal.ZERO, BigDecimal::add);
    return (negative ? sum.negate() : sum).doubleValue();
  }

  private static Fault notANumber(String text) {
    return new Fault(Printable.quoted(text) + " is not a number with a unit", ALLOWED);
  }

  private static Fault tooManyParts(String text) {
    return new Fault(
        Printable.quoted(text) + " is more than one length",
        "one number with its unit, or feet and then inches, is allowed");
  }

  /** A number with its unit, both as written. */
  private record Part(String number, String unit) {

    boolean isIn(String word, String mark) {
      return unit.equals(word) || unit.equals(mark);
    }

    Optional<Fault> fault() {
      if (number.contains(",")) {
        return fault(number, " has a decimal comma", "a decimal point is allowed, as in 2.5 cm");
      }
      if (!NUMBER.matcher(number).matches() && !FRACTION.matcher(number).matches()) {
        return fault(number, " is not a number", ALLOWED);
      }
      if (unit.isEmpty()) {
        return fault(number, " has no unit", ALLOWED);
      }
      return UNITS.containsKey(unit)
          ? Optional.empty()
          : fault(unit, " is not a unit of length", "mm, cm, m, in and ft are allowed");
    }

    BigDecimal millimetres() {
      Matcher fraction = FRACTION.matcher(number);
      BigDecimal unitLength = UNITS.get(unit);
      if (!fraction.matches()) {
        return new BigDecimal(number).multiply(unitLength);
      }
      String whole = fraction.group("whole") == null ? "0" : fraction.group("whole");
      BigDecimal below = new BigDecimal(fraction.group("below"));
      BigDecimal above =
          new BigDecimal(whole).multiply(below).add(new BigDecimal(fraction.group("above")));
      return above.multiply(unitLength).divide(below, MathContext.DECIMAL128);
    }

    private static Optional<Fault> fault(String what, String wrong, String allowed) {
      return Optional.of(new Fault(Printable.quoted(what) + wrong, allowed));
    }
  }
}
