package plycrag.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.machine.ProgramFrame;
import plycrag.wall.machine.ProgramFrame.ArcCentres;
import plycrag.wall.machine.ProgramFrame.Beside;
import plycrag.wall.machine.ProgramFrame.Park;
import plycrag.wall.machine.ProgramFrame.WorkOffset;

/** The keys of {@code [machine]} for what larger controllers want said around the moves. */
final class ProgramKeys {
  static final Parameter<Boolean> PERCENT_LINES =
      new Parameter<>(
          "percent-lines",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether a program's first line and its last are a percent sign alone.");
  static final Parameter<Integer> PROGRAM_NUMBER =
      new Parameter<>(
          "program-number",
          new CountKind(new Range(1, 9000), "as the controller counts its programs"),
          DefaultValue.derived("none is written"),
          "The number of the first program (O with four digits); the others count on from it,"
              + " sheet by sheet in the order in which they run.");
  static final Parameter<Boolean> SAFE_START =
      new Parameter<>(
          "safe-start",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether programs begin by cancelling what another may have left in force: cutter"
              + " compensation, tool length and canned cycles (G40 G49 G80).");
  static final Parameter<WorkOffset> WORK_OFFSET =
      new Parameter<>(
          "work-offset",
          new WordKind<>(List.of(WorkOffset.values())),
          DefaultValue.word(WorkOffset.G54),
          "Which of the controller's zeros the programs count from.");
  static final Parameter<ArcCentres> ARC_CENTRES =
      new Parameter<>(
          "arc-centres",
          new WordKind<>(List.of(ArcCentres.values())),
          DefaultValue.word(ArcCentres.UNSAID),
          "How the centres of arcs are told: from where each begins, which most controllers take"
              + " for granted, the same and said so (G91.1), or from where X and Y are zero"
              + " (G90.1).");
  static final Parameter<Beside> RUNS_BESIDE =
      new Parameter<>(
          "runs-beside",
          new WordKind<>(List.of(Beside.values())),
          DefaultValue.word(Beside.NOTHING),
          "What is switched on with the spindle and off before it stops (M9): dust extraction or"
              + " blown air that is wired to M7 or M8. What holds the sheet down is never switched"
              + " by a program, since the next one finds the sheet where it lay.");
  static final Parameter<Double> PARK_X = park("x");
  static final Parameter<Double> PARK_Y = park("y");

  static final List<Parameter<?>> ALL =
      List.of(
          PERCENT_LINES,
          PROGRAM_NUMBER,
          SAFE_START,
          WORK_OFFSET,
          ARC_CENTRES,
          RUNS_BESIDE,
          PARK_X,
          PARK_Y);

  private ProgramKeys() {}

  private static Parameter<Double> park(String axis) {
    return new Parameter<>(
        "park-" + axis,
        LengthKind.length(-10_000, 10_000),
        DefaultValue.derived("0 if the other is told; else the spindle stays where it is"),
        "The "
            + axis.toUpperCase(Locale.ROOT)
            + " to which the spindle goes at a program's end, out of the way of the sheet, from"
            + " where that is zero.");
  }

  static ProgramFrame record(Values values) {
    boolean parks = values.isGiven(PARK_X) || values.isGiven(PARK_Y);
    return new ProgramFrame(
        values.get(PERCENT_LINES),
        values.given(PROGRAM_NUMBER),
        values.get(SAFE_START),
        values.get(WORK_OFFSET),
        values.get(ARC_CENTRES),
        values.get(RUNS_BESIDE),
        parks
            ? Optional.of(
                new Park(values.given(PARK_X).orElse(0.0), values.given(PARK_Y).orElse(0.0)))
            : Optional.empty());
  }
}
