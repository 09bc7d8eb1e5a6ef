package plycrag.read;

import java.util.List;
import java.util.Locale;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.units.LengthUnit;
import plycrag.wall.machine.ChangePlace;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.Comments;
import plycrag.wall.machine.Controller.Cycles;
import plycrag.wall.machine.Controller.DwellUnit;
import plycrag.wall.machine.Controller.ToolChange;

/**
 * The keys of {@code [machine]} that say what its controller understands; the defaults suit the
 * plainest.
 */
final class ControllerKeys {
  /** Ends of arcs rounded to fewer digits of an inch would not lie on their circle. */
  private static final int INCH_DECIMALS = 4;

  private static final int MILLIMETRE_DECIMALS = 3;

  static final Parameter<Cycles> DRILL_CYCLES =
      new Parameter<>(
          "drill-cycles",
          new WordKind<>(List.of(Cycles.values())),
          DefaultValue.word(Cycles.MOVES),
          "How a hole is spelled: move by move, which every controller knows, or as a canned cycle"
              + " (G81, G83).");
  static final Parameter<ToolChange> TOOL_CHANGE =
      new Parameter<>(
          "tool-change",
          new WordKind<>(List.of(ToolChange.values())),
          DefaultValue.word(ToolChange.PROGRAM),
          "Where another tool is needed: a program of its own for every tool, a pause for a person"
              + " (M0), or a word to the machine (M6).");
  static final Parameter<Double> CHANGE_HEIGHT =
      new Parameter<>(
          "change-height",
          LengthKind.length(1, 500),
          DefaultValue.length("100 mm", "4 in"),
          "Height above the sheet at which a program stops for another tool, so that a hand gets at"
              + " the spindle.");
  static final Parameter<Double> CHANGE_X = changePlace("x");
  static final Parameter<Double> CHANGE_Y = changePlace("y");
  static final Parameter<Boolean> LENGTH_OFFSETS =
      new Parameter<>(
          "length-offsets",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether the machine is told to count with the length of every tool that is changed (G43"
              + " H with the tool's number).");
  static final Parameter<Boolean> ARCS =
      new Parameter<>(
          "arcs",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether the controller follows arcs (G2, G3); otherwise they are short straight moves.");
  static final Parameter<DwellUnit> DWELL_UNIT =
      new Parameter<>(
          "dwell-unit",
          new WordKind<>(List.of(DwellUnit.values())),
          DefaultValue.word(DwellUnit.SECONDS),
          "What the number of a wait (G4 P) counts. Make sure: 3 seconds told as 3000 last 50"
              + " minutes.");
  static final Parameter<Comments> COMMENTS =
      new Parameter<>(
          "comments",
          new WordKind<>(List.of(Comments.values())),
          DefaultValue.word(Comments.PARENTHESES),
          "How remarks are written: in parentheses, after a semicolon, or not at all.");
  static final Parameter<Boolean> LINE_NUMBERS =
      new Parameter<>(
          "line-numbers", new FlagKind(), DefaultValue.flag(false), "Whether lines are numbered.");
  static final Parameter<Integer> LINE_LENGTH =
      new Parameter<>(
          "line-length",
          new CountKind(new Range(70, 250), "characters"),
          DefaultValue.count(72),
          "The longest line that is written, its end not counted.");
  static final Parameter<LengthUnit> PROGRAM_UNIT =
      new Parameter<>(
          "program-unit",
          new WordKind<>(List.of(LengthUnit.values())),
          DefaultValue.word(LengthUnit.MM),
          "The unit of the programs' lengths, whatever the unit of this file.");
  static final Parameter<Integer> DECIMALS =
      new Parameter<>(
          "decimals",
          new CountKind(new Range(MILLIMETRE_DECIMALS, INCH_DECIMALS), "digits"),
          DefaultValue.derived("3 in millimetres, 4 in inches"),
          "The most digits after the point; inches need 4.");

  static final List<Parameter<?>> ALL =
      List.of(
          DRILL_CYCLES,
          TOOL_CHANGE,
          CHANGE_HEIGHT,
          CHANGE_X,
          CHANGE_Y,
          LENGTH_OFFSETS,
          ARCS,
          DWELL_UNIT,
          COMMENTS,
          LINE_NUMBERS,
          LINE_LENGTH,
          PROGRAM_UNIT,
          DECIMALS);

  private ControllerKeys() {}

  private static Parameter<Double> changePlace(String axis) {
    return new Parameter<>(
        "change-" + axis,
        LengthKind.length(-10_000, 10_000),
        DefaultValue.derived("0 where a person changes tools; else the machine goes by itself"),
        "The "
            + axis.toUpperCase(Locale.ROOT)
            + " at which a program stops for another tool, from where that is zero.");
  }

  /** Reports inches with too few digits. */
  static void check(Values values, Faults faults) {
    if (values.isSound(PROGRAM_UNIT) && values.isSound(DECIMALS)) {
      int needed = decimals(values.get(PROGRAM_UNIT));
      int given = values.given(DECIMALS).orElse(needed);
      if (given < needed) {
        faults.add(
            values.key(DECIMALS),
            values.place(DECIMALS),
            given + " digits are too few for inches",
            needed + " digits is allowed");
      }
    }
  }

  static Controller record(Values values) {
    LengthUnit unit = values.get(PROGRAM_UNIT);
    return new Controller(
        values.get(DRILL_CYCLES),
        values.get(TOOL_CHANGE),
        new ChangePlace(
            values.get(CHANGE_HEIGHT),
            values.given(CHANGE_X),
            values.given(CHANGE_Y),
            values.get(LENGTH_OFFSETS)),
        values.get(ARCS),
        values.get(DWELL_UNIT),
        new Controller.Text(
            values.get(COMMENTS), values.get(LINE_NUMBERS), values.get(LINE_LENGTH)),
        unit,
        values.given(DECIMALS).orElse(decimals(unit)),
        ProgramKeys.record(values));
  }

  private static int decimals(LengthUnit unit) {
    return unit == LengthUnit.IN ? INCH_DECIMALS : MILLIMETRE_DECIMALS;
  }
}
