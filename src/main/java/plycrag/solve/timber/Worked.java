package plycrag.solve.timber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A formula with what went into it and what came out, so that anybody can do it again by hand.
 *
 * @param clause where it stands, {@code EN 1995-1-1, (6.11)}
 * @param formula as it stands there, in the names of the symbols
 * @param symbols what went into it, and steps between, in the order of use
 * @param value what came out
 * @param unit of what came out; empty for a part of what may be
 */
public record Worked(
    String clause, String formula, List<Symbol> symbols, double value, String unit) {
  /**
   * A named value.
   *
   * @param name as in the formula
   * @param value how much
   * @param unit of what; empty for a number alone
   */
  public record Symbol(String name, double value, String unit) {}

  /** Keeps a copy. */
  public Worked {
    symbols = List.copyOf(symbols);
  }

  /** The value of one of its symbols. */
  public double symbol(String name) {
    return symbols.stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no symbol " + name + " in " + clause))
        .value();
  }

  /** The one with the least value, the first of equals: of ways to fail, the one that governs. */
  public static Worked least(List<Worked> several) {
    return several.stream().min(Comparator.comparingDouble(Worked::value)).orElseThrow();
  }

  /**
   * The one with the greatest value, the first of equals: of utilisations, the one that governs.
   */
  public static Worked greatest(List<Worked> several) {
    return several.stream()
        .reduce((one, other) -> other.value() > one.value() ? other : one)
        .orElseThrow();
  }

  /** Starts one of EN 1995-1-1; the equation with its brackets or the clause. */
  static Draft of(String place, String formula) {
    return new Draft("EN 1995-1-1, " + place, formula, List.of());
  }

  /** One that is being put together. */
  record Draft(String clause, String formula, List<Symbol> symbols) {
    Draft with(String name, double value, String unit) {
      List<Symbol> all = new ArrayList<>(symbols);
      all.add(new Symbol(name, value, unit));
      return new Draft(clause, formula, all);
    }

    Draft with(String name, double value) {
      return with(name, value, "");
    }

    /** A stress or a strength, N/mm². */
    Draft stress(String name, double value) {
      return with(name, value, "N/mm²");
    }

    /** A length, mm. */
    Draft length(String name, double value) {
      return with(name, value, "mm");
    }

    Worked is(double value) {
      return is(value, "");
    }

    Worked is(double value, String unit) {
      return new Worked(clause, formula, symbols, value, unit);
    }
  }
}
