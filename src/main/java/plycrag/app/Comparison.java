package plycrag.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.units.Decimal;
import plycrag.units.Significant;

/** Two walls side by side, as lines for a terminal. */
final class Comparison {
  private static final int NAMED = 78;
  private static final int COLUMN = 16;

  private final Design.Judged one;
  private final Design.Judged other;

  Comparison(Design.Judged one, Design.Judged other) {
    this.one = one;
    this.other = other;
  }

  /** Figures first, then what is bought and differs. */
  List<String> lines() {
    Tally first = Tally.of(one);
    Tally second = Tally.of(other);
    List<String> lines = new ArrayList<>();
    lines.add(line("", name(one), name(other)));
    lines.add(line("cost", cost(first), cost(second)));
    add(lines, "mass as built, kg", first, second, tally -> Decimal.of(tally.mass(), 1));
    add(lines, "climbing face, m2", first, second, tally -> Decimal.of(tally.area(), 2));
    add(lines, "longest to carry, mm", first, second, tally -> Decimal.of(tally.longest(), 1));
    add(lines, "inserts", first, second, tally -> "" + tally.counts().inserts());
    add(lines, "sheets", first, second, tally -> "" + tally.counts().sheets());
    add(lines, "sticks", first, second, tally -> "" + tally.counts().sticks());
    add(lines, "members", first, second, tally -> "" + tally.counts().members());
    add(lines, "screws through sheets", first, second, tally -> "" + tally.counts().screws());
    add(lines, "waste of sheets, %", first, second, one -> percent(one.waste().sheets()));
    add(lines, "waste of sticks, %", first, second, one -> percent(one.waste().sticks()));
    add(lines, "strength, largest utilisation", first, second, Comparison::utilisation);
    add(lines, "strength, lines that fail", first, second, Comparison::failing);
    add(lines, "errors", first, second, tally -> "" + tally.errors());
    add(lines, "warnings", first, second, tally -> "" + tally.warnings());
    lines.addAll(differences("To buy", bought(one), bought(other)));
    return lines;
  }

  private static void add(
      List<String> lines, String what, Tally one, Tally other, Function<Tally, String> figure) {
    lines.add(line(what, figure.apply(one), figure.apply(other)));
  }

  private static String name(Design.Judged design) {
    return design.checked().layout().wall().name();
  }

  private static String cost(Tally tally) {
    return tally.cost().map(sum -> sum.toPlainString()).orElse("not known");
  }

  private static String utilisation(Tally tally) {
    return tally
        .strength()
        .flatMap(Tally.Strength::largest)
        .map(Significant::of)
        .orElse("not reckoned");
  }

  private static String failing(Tally tally) {
    return tally.strength().map(found -> "" + found.failing()).orElse("not reckoned");
  }

  private static String percent(double part) {
    return Decimal.of(100 * part, 1);
  }

  /** How many of each article, by what its line of the shopping list says of it. */
  private static Map<String, String> bought(Design.Judged design) {
    Table table = Bill.of(design).shopping().table();
    int quantity = table.columns().indexOf("quantity");
    List<Integer> named =
        List.of("article", "size").stream().map(table.columns()::indexOf).toList();
    Map<String, String> bought = new LinkedHashMap<>();
    for (List<Cell> row : table.rows()) {
      String article =
          named.stream().map(at -> row.get(at).text()).collect(Collectors.joining(" ")).strip();
      bought.merge(article, row.get(quantity).text(), (a, b) -> a + " + " + b);
    }
    return bought;
  }

  private static List<String> differences(
      String heading, Map<String, String> one, Map<String, String> other) {
    Set<String> all = new TreeSet<>(one.keySet());
    all.addAll(other.keySet());
    List<String> lines = new ArrayList<>();
    for (String article : all) {
      String first = one.getOrDefault(article, "0");
      String second = other.getOrDefault(article, "0");
      if (!first.equals(second)) {
        lines.add(line(article, first, second));
      }
    }
    lines.add(0, lines.isEmpty() ? heading + ": the same." : heading + ", where it differs:");
    return lines;
  }

  private static String line(String what, String one, String other) {
    return (padded(what, NAMED) + padded(one, COLUMN) + other).stripTrailing();
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
