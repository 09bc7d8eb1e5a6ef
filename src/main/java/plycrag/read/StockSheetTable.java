package plycrag.read;

import java.util.List;
import java.util.OptionalInt;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.wall.Sheet;
import plycrag.wall.machine.SheetCuttingRules;

/** The keys of {@code [[stock-sheet]]}. */
final class StockSheetTable {
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(100, 6000),
          DefaultValue.derived("that of [sheet]"),
          "How long it is along the grain that the longer side of [sheet] has.");
  static final Parameter<Double> WIDTH =
      new Parameter<>(
          "width",
          LengthKind.length(100, 6000),
          DefaultValue.derived("that of [sheet]"),
          "How wide it is across that grain.");
  static final Parameter<Integer> AT_HAND =
      new Parameter<>(
          "at-hand",
          new CountKind(new Range(1, 200), "sheets"),
          DefaultValue.derived("none: they are bought"),
          "How many of them are at hand; these are used before any is bought.");
  static final Parameter<Double> PRICE =
      new Parameter<>(
          "price",
          new NumberKind(new Range(0.001, 100), "times that of [sheet]"),
          DefaultValue.derived("by its area"),
          "What one costs, in parts of what a sheet of [sheet] costs; it decides which are bought,"
              + " and the price list has no part in it.");

  static final TableSpec TABLE =
      new TableSpec(
          "stock-sheet",
          true,
          "Sheets of another size that can be had, and sheets or large offcuts at hand.",
          List.of(LENGTH, WIDTH, AT_HAND, PRICE),
          List.of());

  private StockSheetTable() {}

  /** Reports what is at hand and has a price. */
  static void check(List<Values> sheets, Faults faults) {
    for (Values sheet : sheets) {
      if (sheet.isGiven(AT_HAND) && sheet.isGiven(PRICE)) {
        faults.add(
            sheet.key(PRICE),
            sheet.place(PRICE),
            "what is at hand costs nothing",
            "at-hand or price is allowed, not both");
      }
    }
  }

  static SheetCuttingRules.Kind record(Values values, Sheet sheet) {
    double length = values.given(LENGTH).orElse(sheet.length());
    double width = values.given(WIDTH).orElse(sheet.width());
    double byArea = length * width / (sheet.length() * sheet.width());
    OptionalInt atHand = values.given(AT_HAND).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    return new SheetCuttingRules.Kind(
        length, width, atHand.isPresent() ? 0 : values.given(PRICE).orElse(byArea), atHand);
  }
}
