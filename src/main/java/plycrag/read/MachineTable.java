package plycrag.read;

import java.util.List;
import java.util.stream.Stream;
import plycrag.read.schema.AtLeast;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.Screws;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Machine.Equipment;
import plycrag.wall.machine.Machine.Heights;
import plycrag.wall.machine.Machine.Origin;
import plycrag.wall.machine.Machine.Spindle;
import plycrag.wall.machine.Machine.Work;
import plycrag.wall.machine.Machine.ZZero;
import plycrag.wall.machine.Machine.Zero;
import plycrag.wall.machine.MachineLimits;
import plycrag.wall.machine.MachineLimits.LongSide;
import plycrag.wall.machine.MachineLimits.Travel;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.machine.Tool;

/** The keys of {@code [machine]}. */
final class MachineTable {
  private static final Range SPEEDS = new Range(100, 60_000);

  static final Parameter<ZZero> Z_ZERO =
      new Parameter<>(
          "z-zero",
          new WordKind<>(List.of(ZZero.values())),
          DefaultValue.word(ZZero.SPOILBOARD),
          "Where the programs have Z zero: on the board under the sheet, or on the sheet's top.");
  static final Parameter<Double> BREAKTHROUGH =
      new Parameter<>(
          "breakthrough",
          LengthKind.length(0, 5),
          DefaultValue.length("0.5 mm", "1/64 in"),
          "How far a through hole goes on below the sheet.");
  static final Parameter<Double> CLEARANCE_HEIGHT =
      new Parameter<>(
          "clearance-height",
          LengthKind.length(1, 200),
          DefaultValue.length("15 mm", "5/8 in"),
          "Height above the sheet at which the tool goes from hole to hole; a sheet that is bowed lies"
              + " higher in places.");
  static final Parameter<Double> SAFE_HEIGHT =
      new Parameter<>(
          "safe-height",
          LengthKind.length(1, 300),
          DefaultValue.length("25 mm", "1 in"),
          "Height above the sheet that clears every clamp; the first and the last move go there.");
  static final Parameter<Double> SPINDLE_SPEED =
      new Parameter<>(
          "spindle-speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.number(4000),
          "Turns of the spindle per minute.");
  static final Parameter<Double> PLUNGE_FEED =
      new Parameter<>(
          "plunge-feed",
          LengthKind.feed(10, 20_000),
          DefaultValue.feed("600 mm", "24 in"),
          "How fast the tool goes down into the sheet.");
  static final Parameter<Double> DWELL =
      new Parameter<>(
          "dwell",
          new NumberKind(new Range(0, 60), "seconds"),
          DefaultValue.number(3),
          "Wait for the spindle to come up to speed before the first hole.");
  static final Parameter<Origin> ORIGIN =
      new Parameter<>(
          "origin",
          new WordKind<>(List.of(Origin.values())),
          DefaultValue.word(Origin.LOWER_LEFT),
          "The corner of the sheet, as it lies on the machine, where X and Y are zero.");
  static final Parameter<LongSide> LONG_SIDE =
      new Parameter<>(
          "long-side",
          new WordKind<>(List.of(LongSide.values())),
          DefaultValue.word(LongSide.AS_BUILT),
          "Along which axis the longer side of every sheet lies, as the machine's bed asks;"
              + " as-built turns each as its first piece stands on the wall.");
  static final Parameter<Double> TRAVEL_X = travel("x", 10_000, "across");
  static final Parameter<Double> TRAVEL_Y = travel("y", 10_000, "away from its front");
  static final Parameter<Double> TRAVEL_Z = travel("z", 1000, "up and down");
  static final Parameter<Double> RAPID_RATE =
      new Parameter<>(
          "rapid-rate",
          LengthKind.feed(100, 100_000),
          DefaultValue.feed("5000 mm", "200 in"),
          "How fast the machine moves without cutting; only the estimated time depends on it.");
  static final Parameter<Double> ACCELERATION =
      new Parameter<>(
          "acceleration",
          LengthKind.acceleration(10, 20_000),
          DefaultValue.acceleration("300 mm", "12 in"),
          "How fast the machine comes to speed and stops; only the estimated time depends on it.");
  static final Parameter<Double> LEAST_SPEED =
      new Parameter<>(
          "least-speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.number(MachineLimits.UNTOLD_SPEED),
          "The slowest that the spindle can turn and still cut; a router's is often far above that"
              + " of a boring bit.");
  static final Parameter<Double> GREATEST_SPEED =
      new Parameter<>(
          "greatest-speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.number(60_000),
          "The fastest that the spindle can turn.");

  static final TableSpec TABLE =
      new TableSpec(
          "machine",
          false,
          "The router that drills the sheets.",
          Stream.of(
                  List.of(
                      Z_ZERO,
                      BREAKTHROUGH,
                      CLEARANCE_HEIGHT,
                      SAFE_HEIGHT,
                      SPINDLE_SPEED,
                      PLUNGE_FEED,
                      DWELL,
                      ORIGIN,
                      LONG_SIDE,
                      TRAVEL_X,
                      TRAVEL_Y,
                      TRAVEL_Z,
                      RAPID_RATE,
                      ACCELERATION,
                      LEAST_SPEED,
                      GREATEST_SPEED),
                  ScrewHoleKeys.ALL,
                  MarkKeys.ALL,
                  ControllerKeys.ALL,
                  ProgramKeys.ALL,
                  RoutingKeys.ALL)
              .<Parameter<?>>flatMap(List::stream)
              .toList(),
          List.of(
              new AtLeast(SAFE_HEIGHT, CLEARANCE_HEIGHT),
              new AtLeast(GREATEST_SPEED, LEAST_SPEED)));

  private MachineTable() {}

  private static Parameter<Double> travel(String axis, double greatest, String way) {
    return new Parameter<>(
        "travel-" + axis,
        LengthKind.length(20, greatest),
        DefaultValue.derived("not told, and nothing is held against it"),
        "How far the machine moves " + way + ".");
  }

  static Machine record(Values values, Screws screws, List<Tool> tools, List<KeepOut> keepOuts) {
    return new Machine(
        new Zero(values.get(Z_ZERO), values.get(ORIGIN)),
        new Heights(
            values.get(BREAKTHROUGH), values.get(CLEARANCE_HEIGHT), values.get(SAFE_HEIGHT)),
        new Spindle(values.get(SPINDLE_SPEED), values.get(PLUNGE_FEED), values.get(DWELL)),
        new Work(
            ScrewHoleKeys.record(values, screws),
            MarkKeys.record(values),
            MarkKeys.pins(values),
            RoutingKeys.record(values)),
        new Equipment(limits(values), ControllerKeys.record(values), tools, keepOuts));
  }

  private static MachineLimits limits(Values values) {
    return new MachineLimits(
        new Travel(values.given(TRAVEL_X), values.given(TRAVEL_Y), values.given(TRAVEL_Z)),
        values.get(RAPID_RATE),
        values.get(ACCELERATION),
        new SpeedRange(values.get(LEAST_SPEED), values.get(GREATEST_SPEED)),
        values.get(LONG_SIDE));
  }
}
