package plycrag.read;

import java.util.List;
import java.util.stream.Stream;
import plycrag.catalog.BoltThread;
import plycrag.read.schema.AtLeast;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.ThreadKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.units.LengthUnit;
import plycrag.wall.Inserts;
import plycrag.wall.Inserts.Blocked;
import plycrag.wall.Inserts.Body;
import plycrag.wall.Inserts.BoltZone;
import plycrag.wall.Inserts.Fastening;
import plycrag.wall.Inserts.Fixing;
import plycrag.wall.Inserts.WhenBlocked;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.Pattern.Symmetry;

/** The keys of {@code [inserts]}. */
final class InsertTable {
  static final Parameter<String> POSITIONS =
      new Parameter<>(
          "positions",
          TextKind.CSV_FILE,
          DefaultValue.derived("none: needed for the pattern file, refused with other patterns"),
          "The list of positions that you keep, beside this file or in a folder from there; its"
              + " columns are facet, u and v.");
  static final Parameter<Fixing> KIND =
      new Parameter<>(
          "kind",
          new WordKind<>(List.of(Fixing.values())),
          DefaultValue.word(Fixing.HAMMER_IN),
          "What holds an insert in the sheet: prongs, or a flange with its own small screws.");
  static final Parameter<Integer> FLANGE_SCREWS =
      new Parameter<>(
          "flange-screws",
          new CountKind(new Range(1, 6), "screws"),
          DefaultValue.count(3),
          "Screws in the flange of each insert that is screwed on.");
  static final Parameter<BoltThread> THREAD =
      new Parameter<>(
          "thread",
          new ThreadKind(),
          DefaultValue.derived("M10; 3/8-16 UNC where bare numbers mean inches"),
          "The thread of the inserts and of the bolts for holds.");
  static final Parameter<Double> HOLE =
      new Parameter<>(
          "hole",
          LengthKind.length(4, 40),
          DefaultValue.length("12 mm", "7/16 in"),
          "Diameter of the hole for an insert's barrel.");
  static final Parameter<Double> FLANGE =
      new Parameter<>(
          "flange",
          LengthKind.length(6, 100),
          DefaultValue.length("26 mm", "1 in"),
          "Diameter of an insert's flange, its own small screws included.");
  static final Parameter<Double> BARREL =
      new Parameter<>(
          "barrel",
          LengthKind.length(2, 60),
          DefaultValue.length("12 mm", "7/16 in"),
          "Length of an insert's barrel, from the flange.");
  static final Parameter<Double> BOLT_ZONE =
      new Parameter<>(
          "bolt-zone",
          LengthKind.length(0, 100),
          DefaultValue.length("16 mm", "5/8 in"),
          "Diameter of the space behind an insert that a bolt's end may reach.");
  static final Parameter<Double> BOLT_REACH =
      new Parameter<>(
          "bolt-reach",
          LengthKind.length(0, 500),
          DefaultValue.length("50 mm", "2 in"),
          "How far behind the sheet that space goes.");
  static final Parameter<WhenBlocked> WHEN_BLOCKED =
      new Parameter<>(
          "when-blocked",
          new WordKind<>(List.of(WhenBlocked.values())),
          DefaultValue.word(WhenBlocked.SOLVE),
          "What happens where something is in the way of inserts: an error each; the whole pattern"
              + " shifts; single columns and rows move; blocked ones are left out; or columns,"
              + " rows, studs and blocking between others move together. What is still blocked then"
              + " is left out, as a warning. Studs of facets that meet stay in line under a"
              + " support.");
  static final Parameter<Double> GREATEST_MOVE =
      new Parameter<>(
          "greatest-move",
          LengthKind.length(0, 500),
          DefaultValue.length("75 mm", "3 in"),
          "How far a column or a row may be moved when something is in its way.");

  static final TableSpec TABLE =
      new TableSpec(
          "inserts",
          false,
          "The threaded inserts that take the holds.",
          Stream.of(
                  List.of(
                      PatternKeys.PATTERN,
                      PatternKeys.PITCH_ACROSS,
                      PatternKeys.PITCH_UP,
                      PatternKeys.TOP_PITCH_UP,
                      PatternKeys.DENSITY,
                      PatternKeys.TOP_DENSITY,
                      PatternKeys.DENSITY_PER,
                      PatternKeys.SYMMETRY,
                      PatternKeys.SPACING,
                      PatternKeys.TOP_SPACING,
                      PatternKeys.SEED,
                      PatternKeys.COLUMNS,
                      PatternKeys.ROWS,
                      POSITIONS,
                      PatternKeys.SETBACK,
                      KIND,
                      FLANGE_SCREWS,
                      THREAD,
                      HOLE,
                      FLANGE,
                      BARREL),
                  RecessKeys.ALL,
                  List.of(BOLT_ZONE, BOLT_REACH, WHEN_BLOCKED, GREATEST_MOVE))
              .<Parameter<?>>flatMap(List::stream)
              .toList(),
          List.of(new AtLeast(FLANGE, HOLE)));

  private InsertTable() {}

  /** Reports what the pattern needs and does not get, or gets and does not need. */
  static void check(Values values, Faults faults) {
    PatternKeys.checkLines(values, faults);
    RecessKeys.check(values, faults);
    if (values.isSound(PatternKeys.PATTERN)) {
      checkSymmetry(values, faults);
      checkPositions(values, faults);
    }
  }

  private static void checkSymmetry(Values values, Faults faults) {
    Kind pattern = values.get(PatternKeys.PATTERN);
    boolean isGiven = pattern == Kind.LINES || pattern == Kind.FILE;
    Parameter<Symmetry> symmetry = PatternKeys.SYMMETRY;
    if (isGiven && values.isSound(symmetry) && values.get(symmetry) != Symmetry.NONE) {
      faults.add(
          values.key(symmetry),
          values.place(symmetry),
          "symmetry stands beside the pattern " + WordKind.word(pattern),
          pattern == Kind.LINES
              ? "none is allowed with given lines"
              : "none is allowed with given positions");
    }
  }

  private static void checkPositions(Values values, Faults faults) {
    boolean needed = values.get(PatternKeys.PATTERN) == Kind.FILE;
    if (needed && !values.isGiven(POSITIONS)) {
      faults.add(
          values.key(POSITIONS),
          values.place(PatternKeys.PATTERN),
          "no list of positions is named",
          "the pattern file needs positions, such as \"positions.csv\"");
    } else if (!needed && values.isGiven(POSITIONS)) {
      faults.add(
          values.key(POSITIONS),
          values.place(POSITIONS),
          "positions stand beside the pattern " + WordKind.word(values.get(PatternKeys.PATTERN)),
          "they are allowed with the pattern file alone");
    }
  }

  private static BoltThread thread(Values values) {
    BoltThread usual = values.unit() == LengthUnit.MM ? BoltThread.M10 : BoltThread.UNC_3_8;
    return values.given(THREAD).orElse(usual);
  }

  static Inserts record(Values values) {
    return new Inserts(
        PatternKeys.ofFacets(values),
        values.given(POSITIONS),
        new Fastening(values.get(KIND), values.get(FLANGE_SCREWS), thread(values)),
        new Body(
            values.get(HOLE), values.get(FLANGE), values.get(BARREL), RecessKeys.record(values)),
        new BoltZone(values.get(BOLT_ZONE), values.get(BOLT_REACH)),
        new Blocked(values.get(WHEN_BLOCKED), values.get(GREATEST_MOVE)));
  }
}
