package plycrag.document;

import java.math.BigDecimal;
import java.util.List;
import plycrag.units.Decimal;

/** A cell of a table. */
public sealed interface Cell {

  /** What is printed. */
  String text();

  /** Whether it is set as a number. */
  default boolean isNumber() {
    return this instanceof Quantity || this instanceof Money;
  }

  /** Words; a writer sees to it that they stay words. */
  record Words(String text) implements Cell {}

  /**
   * Marks of parts, whose line in the lists this is; a page leads to it and from it.
   *
   * @param marks one at least, each of capitals, a number and perhaps a small letter
   */
  record Marks(List<String> marks) implements Cell {
    /** Copies the marks. */
    public Marks {
      marks = List.copyOf(marks);
    }

    @Override
    public String text() {
      return String.join(" ", marks);
    }
  }

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

  /** Marks of parts. */
  static Cell marks(List<String> marks) {
    return new Marks(marks);
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
