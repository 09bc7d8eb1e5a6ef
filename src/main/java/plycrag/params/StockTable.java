package plycrag.params;

import java.util.List;

/** The keys of {@code [stock]}. */
final class StockTable {
  static final Parameter<List<Double>> LENGTHS =
      new Parameter<>(
          "lengths",
          new LengthListKind(LengthKind.length(300, 20_000), 50),
          Standard.lengths("2400 3000 3600 4200 4800 5400 6000 mm", "96 120 144 168 192 240 in"),
          "The lengths in which the merchant sells the framing timber.");
  static final Parameter<Double> KERF =
      new Parameter<>(
          "kerf",
          LengthKind.length(0, 10),
          Standard.length("3 mm", "1/8 in"),
          "The width that a saw cut removes.");

  static final TableSpec TABLE =
      new TableSpec("stock", false, "What the merchant sells.", List.of(LENGTHS, KERF), List.of());

  private StockTable() {}

  static StockParameters record(Values values) {
    return new StockParameters(values.get(LENGTHS), values.get(KERF));
  }
}
