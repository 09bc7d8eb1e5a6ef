package plycrag.read;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import plycrag.read.schema.AtLeast;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Needed;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.Tool.Drive;
import plycrag.wall.machine.Tool.Feeds;
import plycrag.wall.machine.Tool.Kind;
import plycrag.wall.machine.Tool.Point;
import plycrag.wall.machine.Tool.Shape;
import plycrag.wall.machine.Tool.Steps;

/** The keys of {@code [[tool]]}. */
final class ToolTable {
  private static final Range SPEEDS = new Range(100, 60_000);

  static final Parameter<Integer> NUMBER =
      new Parameter<>(
          "number",
          new CountKind(new Range(1, 99), "as the machine counts its tools"),
          DefaultValue.derived("its place among the tools"),
          "The number that the machine and the files know it by.");
  static final Parameter<Kind> KIND =
      new Parameter<>(
          "kind",
          new WordKind<>(List.of(Kind.values())),
          DefaultValue.word(Kind.DRILL),
          "A drill makes holes of its own diameter; a countersink lets heads of screws in; an"
              + " engraver writes; an end mill cuts sideways and bores wider holes in a spiral.");
  static final Parameter<Double> DIAMETER =
      new Parameter<>("diameter", LengthKind.length(1, 60), Needed.NONE, "Its diameter.");
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(3, 200),
          Needed.NONE,
          "How deep it can go into the work: the length that cuts and clears chips.");
  static final Parameter<Double> SPEED =
      new Parameter<>(
          "speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.derived("that of the machine (`spindle-speed`)"),
          "Turns per minute at which it is driven.");
  static final Parameter<Double> LEAST_SPEED =
      new Parameter<>(
          "least-speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.number(100),
          "The slowest that its maker allows.");
  static final Parameter<Double> GREATEST_SPEED =
      new Parameter<>(
          "greatest-speed",
          new NumberKind(SPEEDS, "rpm"),
          DefaultValue.number(60_000),
          "The fastest that its maker allows; a boring bit's is often below what a router can"
              + " turn.");
  static final Parameter<Double> PLUNGE_FEED =
      new Parameter<>(
          "plunge-feed",
          LengthKind.feed(10, 20_000),
          DefaultValue.derived("that of the machine"),
          "How fast it goes straight down.");
  static final Parameter<Double> CUT_FEED =
      new Parameter<>(
          "cut-feed",
          LengthKind.feed(10, 40_000),
          DefaultValue.feed("1500 mm", "60 in"),
          "How fast an end mill or an engraver goes sideways.");
  static final Parameter<Double> PECK =
      new Parameter<>(
          "peck",
          LengthKind.length(1, 100),
          DefaultValue.derived("none: it drills in one go"),
          "How deep a drill goes before it comes out to clear its chips, counted from the clearance"
              + " height as canned cycles count it.");
  static final Parameter<Double> PASS_DEPTH =
      new Parameter<>(
          "pass-depth",
          LengthKind.length(0.2, 60),
          DefaultValue.derived("its diameter"),
          "How deep an end mill cuts at a time.");

  static final Parameter<Integer> FLUTES =
      new Parameter<>(
          "flutes",
          new CountKind(new Range(1, 12), "edges"),
          DefaultValue.derived("not told, and no feed per tooth is printed"),
          "How many edges it cuts with; the set-up sheet then prints what each takes at a turn, to"
              + " be held against its maker's table.");
  static final Parameter<Double> POINT_ANGLE =
      new Parameter<>(
          "point-angle",
          new NumberKind(new Range(20, 150), "degrees"),
          DefaultValue.number(90),
          "The angle between the sides of a tool that tapers; for heads of screws theirs.");
  static final Parameter<Double> TIP_DIAMETER =
      new Parameter<>(
          "tip-diameter",
          LengthKind.length(0, 30),
          DefaultValue.length("0 mm", "0 in"),
          "How wide a tool that tapers is at its end.");

  static final TableSpec TABLE =
      new TableSpec(
          "tool",
          true,
          "A tool that the machine holds. Without any, every hole is drilled with a drill of its"
              + " diameter.",
          List.of(
              NUMBER,
              KIND,
              DIAMETER,
              LENGTH,
              SPEED,
              LEAST_SPEED,
              GREATEST_SPEED,
              PLUNGE_FEED,
              CUT_FEED,
              PECK,
              PASS_DEPTH,
              FLUTES,
              POINT_ANGLE,
              TIP_DIAMETER),
          List.of(new AtLeast(GREATEST_SPEED, LEAST_SPEED)));

  private ToolTable() {}

  /** Reports tools that lack what is needed, and such as share a number. */
  static void check(List<Values> tools, Faults faults) {
    Set<Integer> numbers = new HashSet<>();
    for (int at = 0; at < tools.size(); at++) {
      Values tool = tools.get(at);
      Needed.check(tool, TABLE, "tool", List.of(DIAMETER, LENGTH), faults);
      if (tool.isSound(NUMBER) && !numbers.add(number(tool, at))) {
        faults.add(
            tool.key(NUMBER),
            tool.isGiven(NUMBER) ? tool.place(NUMBER) : Needed.firstPlace(tool, TABLE),
            "another tool has number " + number(tool, at),
            "a number of its own is allowed");
      }
    }
  }

  private static int number(Values tool, int at) {
    return tool.given(NUMBER).orElse(at + 1);
  }

  /** The records, in order. */
  static List<Tool> records(List<Values> tools, Values machine) {
    return IntStream.range(0, tools.size())
        .mapToObj(at -> record(tools.get(at), number(tools.get(at), at), machine))
        .toList();
  }

  private static Tool record(Values tool, int number, Values machine) {
    double diameter = tool.get(DIAMETER);
    return new Tool(
        number,
        tool.get(KIND),
        new Shape(
            diameter, tool.get(LENGTH), new Point(tool.get(POINT_ANGLE), tool.get(TIP_DIAMETER))),
        drive(tool, machine),
        new Steps(tool.given(PECK), tool.given(PASS_DEPTH).orElse(diameter), tool.given(FLUTES)));
  }

  private static Drive drive(Values tool, Values machine) {
    return new Drive(
        tool.given(SPEED).orElse(machine.get(MachineTable.SPINDLE_SPEED)),
        new SpeedRange(tool.get(LEAST_SPEED), tool.get(GREATEST_SPEED)),
        new Feeds(
            tool.given(PLUNGE_FEED).orElse(machine.get(MachineTable.PLUNGE_FEED)),
            tool.get(CUT_FEED)));
  }
}
