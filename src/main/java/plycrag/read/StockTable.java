package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.LengthListKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.units.Decimal;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.MaterialWishes.Environment;
import plycrag.wall.buying.MaterialWishes.SheetWish;
import plycrag.wall.buying.MaterialWishes.TimberWish;
import plycrag.wall.buying.ServiceClass;
import plycrag.wall.buying.TimberStock;

/** The keys of {@code [stock]}. */
final class StockTable {
  static final Parameter<List<Double>> LENGTHS =
      new Parameter<>(
          "lengths",
          new LengthListKind(LengthKind.length(300, 20_000), 50),
          DefaultValue.lengths(
              "2400 3000 3600 4200 4800 5400 6000 mm", "96 120 144 168 192 240 in"),
          "The lengths in which the merchant sells the framing timber, whatever its section.");
  static final Parameter<Double> KERF =
      new Parameter<>(
          "kerf",
          LengthKind.length(0, 10),
          DefaultValue.length("3 mm", "1/8 in"),
          "The width that a saw cut removes.");
  static final Parameter<Double> END_TRIM =
      new Parameter<>(
          "end-trim",
          LengthKind.length(0, 100),
          DefaultValue.length("0 mm", "0 in"),
          "What is cut off each end of every stick, because it is split or not square, kerf"
              + " included.");
  static final Parameter<Double> CARRY_LENGTH =
      new Parameter<>(
          "carry-length",
          LengthKind.length(300, 20_000),
          DefaultValue.length("20000 mm", "780 in"),
          "The longest stick that can be carried home; longer ones are not bought.");
  static final Parameter<List<Double>> AT_HAND =
      new Parameter<>(
          "at-hand",
          LengthListKind.inAnyOrder(LengthKind.length(100, 20_000), 200),
          DefaultValue.derived("none"),
          "The sticks of the frame's section that are at hand, one number each; they are used before"
              + " any is bought.");

  static final Parameter<String> PRICES =
      new Parameter<>(
          "prices",
          TextKind.CSV_FILE,
          DefaultValue.derived("none: nothing has a price"),
          "The price list that you keep, beside this file or in a folder from there; its columns"
              + " are article, size, unit, contents, price, currency, tax, mass and available.");
  static final Parameter<Environment> ENVIRONMENT =
      new Parameter<>(
          "environment",
          new WordKind<>(List.of(Environment.values())),
          DefaultValue.word(Environment.INDOORS),
          "Where the wall stands: it decides the service class, how the plywood is glued, what the"
              + " timber is treated with, and how the screws and the other steel are coated.");
  static final Parameter<String> TIMBER_GRADE =
      new Parameter<>(
          "timber-grade",
          TextKind.DESCRIPTION,
          DefaultValue.text("C24", "SPF No. 2"),
          "The grade of the framing timber; the preliminary check of strength reads its class.");
  static final Parameter<String> TIMBER_TREATMENT =
      new Parameter<>(
          "timber-treatment",
          TextKind.DESCRIPTION,
          DefaultValue.derived(
              "untreated indoors, else for the use class of EN 335, or of AWPA U1 in inch files"),
          "What the framing timber is treated with.");
  static final Parameter<String> TIMBER_DRYNESS =
      new Parameter<>(
          "timber-dryness",
          TextKind.DESCRIPTION,
          DefaultValue.text("dried to 20 % or less", "kiln-dried to 19 % or less"),
          "How dry the framing timber is; wet timber shrinks and twists, and holes move.");
  static final Parameter<String> SHEET_BOND =
      new Parameter<>(
          "sheet-bond",
          TextKind.DESCRIPTION,
          DefaultValue.derived("as the environment asks, after EN 636, or PS 1 in inch files"),
          "How the plywood is glued, in the words of its standard.");
  static final Parameter<String> SHEET_FACE =
      new Parameter<>(
          "sheet-face",
          TextKind.DESCRIPTION,
          DefaultValue.text("sanded, sound knots", "sanded, C-plugged or better"),
          "The grade of the face that is climbed on.");

  static final TableSpec TABLE =
      new TableSpec(
          "stock",
          false,
          "What the merchant sells.",
          List.of(
              LENGTHS,
              KERF,
              END_TRIM,
              CARRY_LENGTH,
              AT_HAND,
              PRICES,
              ENVIRONMENT,
              TIMBER_GRADE,
              TIMBER_TREATMENT,
              TIMBER_DRYNESS,
              SHEET_BOND,
              SHEET_FACE),
          List.of());

  private StockTable() {}

  /** Reports a carrying length that no length sold keeps to. */
  static void checkCarrying(Values values, Faults faults) {
    if (!values.isSound(LENGTHS) || !values.isSound(CARRY_LENGTH)) {
      return;
    }
    double shortest = values.get(LENGTHS).get(0);
    if (values.get(CARRY_LENGTH) < shortest) {
      Parameter<?> at = values.isGiven(CARRY_LENGTH) ? CARRY_LENGTH : LENGTHS;
      faults.add(
          values.key(at),
          values.place(at),
          "every length sold is longer than the carry-length",
          "a carry-length of at least "
              + Decimal.of(shortest / values.unit().millimetres(), 4)
              + " "
              + values.unit().word()
              + " is allowed");
    }
  }

  static TimberStock record(Values values) {
    return new TimberStock(
        values.get(LENGTHS),
        values.get(KERF),
        values.get(END_TRIM),
        values.get(CARRY_LENGTH),
        values.given(AT_HAND).orElse(List.of()));
  }

  static MaterialWishes buying(Values values) {
    Environment environment = values.get(ENVIRONMENT);
    String treatment =
        values
            .given(TIMBER_TREATMENT)
            .orElseGet(() -> ServiceClass.treatment(environment, values.unit()));
    String bond =
        values.given(SHEET_BOND).orElseGet(() -> ServiceClass.bond(environment, values.unit()));
    return new MaterialWishes(
        values.given(PRICES),
        environment,
        new TimberWish(values.get(TIMBER_GRADE), treatment, values.get(TIMBER_DRYNESS)),
        new SheetWish(bond, values.get(SHEET_FACE)));
  }
}
