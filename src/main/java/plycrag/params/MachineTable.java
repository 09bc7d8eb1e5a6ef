package plycrag.params;

import java.util.List;
import plycrag.params.MachineParameters.ZZero;

/** The keys of {@code [machine]}. */
final class MachineTable {
  static final Parameter<ZZero> Z_ZERO =
      new Parameter<>(
          "z-zero",
          new WordKind<>(List.of(ZZero.values())),
          Standard.word(ZZero.SPOILBOARD),
          "Where the programs have Z zero: on the board under the sheet, or on the sheet's top.");
  static final Parameter<Double> BREAKTHROUGH =
      new Parameter<>(
          "breakthrough",
          LengthKind.length(0, 5),
          Standard.length("0.5 mm", "1/64 in"),
          "How far a through hole goes on below the sheet.");
  static final Parameter<Double> CLEARANCE_HEIGHT =
      new Parameter<>(
          "clearance-height",
          LengthKind.length(1, 200),
          Standard.length("5 mm", "1/4 in"),
          "Height above the sheet at which the tool goes from hole to hole.");
  static final Parameter<Double> SAFE_HEIGHT =
      new Parameter<>(
          "safe-height",
          LengthKind.length(1, 300),
          Standard.length("25 mm", "1 in"),
          "Height above the sheet that clears every clamp; the first and the last move go there.");
  static final Parameter<Double> SPINDLE_SPEED =
      new Parameter<>(
          "spindle-speed",
          new NumberKind(new Range(100, 60_000), "rpm"),
          Standard.number(4000),
          "Turns of the spindle per minute.");
  static final Parameter<Double> PLUNGE_FEED =
      new Parameter<>(
          "plunge-feed",
          LengthKind.feed(10, 20_000),
          Standard.feed("600 mm", "24 in"),
          "How fast the tool goes down into the sheet.");
  static final Parameter<Double> DWELL =
      new Parameter<>(
          "dwell",
          new NumberKind(new Range(0, 60), "seconds"),
          Standard.number(3),
          "Wait for the spindle to come up to speed before the first hole.");

  static final TableSpec TABLE =
      new TableSpec(
          "machine",
          false,
          "The router that drills the sheets.",
          List.of(
              Z_ZERO,
              BREAKTHROUGH,
              CLEARANCE_HEIGHT,
              SAFE_HEIGHT,
              SPINDLE_SPEED,
              PLUNGE_FEED,
              DWELL),
          List.of(new AtLeast(SAFE_HEIGHT, CLEARANCE_HEIGHT)));

  private MachineTable() {}

  static MachineParameters record(Values values) {
    return new MachineParameters(
        values.get(Z_ZERO),
        values.get(BREAKTHROUGH),
        values.get(CLEARANCE_HEIGHT),
        values.get(SAFE_HEIGHT),
        values.get(SPINDLE_SPEED),
        values.get(PLUNGE_FEED),
        values.get(DWELL));
  }
}
