package plycrag.document;

import java.math.BigDecimal;
import plycrag.units.Decimal;

/** A cell of a table. */
public sealed interface Cell {

  /** What is printed. */
  String text();

  /** Words; a writer sees to it that they stay words. */
  record Words(String text) implements Cell {}

  /**
   * A number.
   *
   * @param value the number
   * @param decimals most digits after the point
   */
  record Quantity(double value, int decimals) implements Cell {
    @Override
    public String text() {
      return Decimal.of(value, decimals);
    }
  }

  /** An amount of money, printed to the hundredth. */
  record Money(BigDecimal value) implements Cell {
    @Override
    public String text() {
      return Decimal.money(value);
    }
  }

  /** Words. */
  static Cell of(String text) {
    return new Words(text);
  }

  /** A number with so many decimals at most. */
  static Cell number(double value, int decimals) {
    return new Quantity(value, decimals);
  }

  /** An amount of money. */
  static Cell money(BigDecimal value) {
    return new Money(value);
  }

  /** A length in millimetres, at most four decimals. */
  static Cell mm(double value) {
    return new Quantity(value, 4);
  }

  /** A count. */
  static Cell of(int count) {
    return new Quantity(count, 0);
  }
}
