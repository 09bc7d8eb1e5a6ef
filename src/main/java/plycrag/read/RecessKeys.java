package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.units.Decimal;
import plycrag.wall.Recess;

/** The keys of {@code [inserts]} that ask for recesses in which flanges lie. */
final class RecessKeys {
  static final Parameter<Double> RECESS_DEPTH =
      new Parameter<>(
          "recess-depth",
          LengthKind.length(0.2, 15),
          DefaultValue.derived("none: flanges lie on the back"),
          "How deep the machine cuts a recess for each flange into the back of the sheets, with an"
              + " end mill; barrels reach as much further toward the climbing face. Sheets whose"
              + " front lies up are then worked on both faces, the back first, and turned over on"
              + " two pins.");
  static final Parameter<Double> RECESS_CLEARANCE =
      new Parameter<>(
          "recess-clearance",
          LengthKind.length(0, 10),
          DefaultValue.length("1 mm", "1/32 in"),
          "How much larger than the flange's diameter the recess's is.");
  static final Parameter<Double> RECESS_LEAVES =
      new Parameter<>(
          "recess-leaves",
          LengthKind.length(2, 40),
          DefaultValue.derived("half of the sheet's thickness"),
          "The least thickness of a sheet that must remain under a recess; the flange bears on"
              + " it.");

  static final List<Parameter<?>> ALL = List.of(RECESS_DEPTH, RECESS_CLEARANCE, RECESS_LEAVES);

  private RecessKeys() {}

  /** Reports what stands without a recess. */
  static void check(Values inserts, Faults faults) {
    for (Parameter<Double> key : List.of(RECESS_CLEARANCE, RECESS_LEAVES)) {
      if (inserts.isGiven(key) && !inserts.isGiven(RECESS_DEPTH)) {
        faults.add(
            inserts.key(key),
            inserts.place(key),
            key.key() + " stands without a recess",
            "it is allowed beside recess-depth alone");
      }
    }
  }

  /** Reports a recess that goes through the sheet. */
  static void checkDepth(Values inserts, Values sheet, Faults faults) {
    Optional<Double> depth = inserts.given(RECESS_DEPTH);
    if (depth.isPresent() && sheet.isSound(SheetTable.THICKNESS)) {
      double thickness = sheet.get(SheetTable.THICKNESS);
      if (depth.get() >= thickness) {
        String unit = inserts.unit().word();
        double one = inserts.unit().millimetres();
        faults.add(
            inserts.key(RECESS_DEPTH),
            inserts.place(RECESS_DEPTH),
            Decimal.of(depth.get() / one, 4) + " " + unit + " goes through the sheet",
            "less than " + Decimal.of(thickness / one, 4) + " " + unit + " is allowed");
      }
    }
  }

  /** The recesses; none unless they are asked for. */
  static Optional<Recess> record(Values inserts) {
    return inserts
        .given(RECESS_DEPTH)
        .map(
            depth ->
                new Recess(
                    inserts.get(InsertTable.FLANGE) + inserts.get(RECESS_CLEARANCE),
                    depth,
                    inserts.given(RECESS_LEAVES)));
  }
}
