package plycrag.params;

import java.util.List;
import plycrag.params.InsertParameters.Fixing;
import plycrag.params.InsertParameters.Pattern;
import plycrag.params.InsertParameters.Symmetry;
import plycrag.params.InsertParameters.WhenBlocked;

/** The keys of {@code [inserts]}. */
final class InsertTable {
  private static final LengthListKind LINES = new LengthListKind(LengthKind.length(0, 50_000), 500);
  private static final String NEEDED = "none: needed for lines, refused with other patterns";

  static final Parameter<Pattern> PATTERN =
      new Parameter<>(
          "pattern",
          new WordKind<>(List.of(Pattern.values())),
          Standard.word(Pattern.GRID),
          "How inserts are set out: a grid, every second row moved by half a pitch, as many as make a"
              + " density, given lines, or scattered without order, clear of timber and seams.");
  static final Parameter<Integer> DENSITY =
      new Parameter<>(
          "density",
          new CountKind(new Range(1, 500), "inserts"),
          Standard.count(25),
          "How many inserts there are to be, for the pattern density.");
  static final Parameter<Density.Per> DENSITY_PER =
      new Parameter<>(
          "density-per",
          new WordKind<>(List.of(Density.Per.values())),
          Standard.word(Density.Per.SQUARE_METRE),
          "On what so many: a square metre of the facet, or as much of it as a stock sheet covers.");
  static final Parameter<Symmetry> SYMMETRY =
      new Parameter<>(
          "symmetry",
          new WordKind<>(List.of(Symmetry.values())),
          Standard.word(Symmetry.NONE),
          "Whether the left half of every facet mirrors the right one; studs then stay where they"
              + " are. Not with given lines, which lie where they are given.");
  static final Parameter<Double> SPACING =
      new Parameter<>(
          "scatter-spacing",
          LengthKind.length(50, 2000),
          Standard.length("180 mm", "7 in"),
          "Least distance between scattered inserts; none is left out where another would fit.");
  static final Parameter<Double> TOP_SPACING =
      new Parameter<>(
          "scatter-top-spacing",
          LengthKind.length(50, 2000),
          Standard.derived("scatter-spacing"),
          "The same at the top of a facet, if scattered inserts are to thin out upward.");
  static final Parameter<Integer> SEED =
      new Parameter<>(
          "scatter-seed",
          new CountKind(new Range(0, 999_999), ""),
          Standard.count(1),
          "Another number makes another scatter.");
  static final Parameter<Double> PITCH_ACROSS =
      new Parameter<>(
          "pitch-across",
          LengthKind.length(50, 2000),
          Standard.length("200 mm", "8 in"),
          "Distance between neighbouring columns.");
  static final Parameter<Double> PITCH_UP =
      new Parameter<>(
          "pitch-up",
          LengthKind.length(50, 2000),
          Standard.length("200 mm", "8 in"),
          "Distance between neighbouring rows.");
  static final Parameter<Double> TOP_PITCH_UP =
      new Parameter<>(
          "top-pitch-up",
          LengthKind.length(50, 2000),
          Standard.derived("pitch-up"),
          "The same at the top of a facet, if the rows of a grid or an offset are to thin out upward:"
              + " each row is as far above the one below as the pitch is there.");
  static final Parameter<List<Double>> COLUMNS =
      new Parameter<>(
          "columns",
          LINES,
          Standard.derived(NEEDED),
          "The columns, measured from the facet's left edge, for the pattern lines.");
  static final Parameter<List<Double>> ROWS =
      new Parameter<>(
          "rows",
          LINES,
          Standard.derived(NEEDED),
          "The rows, measured from the facet's lower edge, for the pattern lines.");
  static final Parameter<Double> SETBACK =
      new Parameter<>(
          "setback",
          LengthKind.length(0, 1000),
          Standard.length("100 mm", "4 in"),
          "Least distance of an insert's centre from the facet's outline; grids start there.");
  static final Parameter<Fixing> KIND =
      new Parameter<>(
          "kind",
          new WordKind<>(List.of(Fixing.values())),
          Standard.word(Fixing.HAMMER_IN),
          "What holds an insert in the sheet: prongs, or a flange with its own small screws.");
  static final Parameter<Integer> FLANGE_SCREWS =
      new Parameter<>(
          "flange-screws",
          new CountKind(new Range(1, 6), "screws"),
          Standard.count(3),
          "Screws in the flange of each insert that is screwed on.");
  static final Parameter<Double> HOLE =
      new Parameter<>(
          "hole",
          LengthKind.length(4, 40),
          Standard.length("12 mm", "7/16 in"),
          "Diameter of the hole for an insert's barrel.");
  static final Parameter<Double> FLANGE =
      new Parameter<>(
          "flange",
          LengthKind.length(6, 100),
          Standard.length("26 mm", "1 in"),
          "Diameter of an insert's flange, its own small screws included.");
  static final Parameter<Double> BARREL =
      new Parameter<>(
          "barrel",
          LengthKind.length(2, 60),
          Standard.length("12 mm", "7/16 in"),
          "Length of an insert's barrel, from the flange.");
  static final Parameter<Double> BOLT_ZONE =
      new Parameter<>(
          "bolt-zone",
          LengthKind.length(0, 100),
          Standard.length("16 mm", "5/8 in"),
          "Diameter of the space behind an insert that a bolt's end may reach.");
  static final Parameter<Double> BOLT_REACH =
      new Parameter<>(
          "bolt-reach",
          LengthKind.length(0, 500),
          Standard.length("50 mm", "2 in"),
          "How far behind the sheet that space goes.");
  static final Parameter<WhenBlocked> WHEN_BLOCKED =
      new Parameter<>(
          "when-blocked",
          new WordKind<>(List.of(WhenBlocked.values())),
          Standard.word(WhenBlocked.SOLVE),
          "What happens where something is in the way of inserts: an error each; the whole pattern"
              + " shifts; single columns and rows move; blocked ones are left out; or columns, rows,"
              + " studs and blocking between others move together. What is still blocked then is"
              + " left out, as a warning.");
  static final Parameter<Double> GREATEST_MOVE =
      new Parameter<>(
          "greatest-move",
          LengthKind.length(0, 500),
          Standard.length("75 mm", "3 in"),
          "How far a column or a row may be moved when something is in its way.");

  static final TableSpec TABLE =
      new TableSpec(
          "inserts",
          false,
          "The threaded inserts that take the holds.",
          List.of(
              PATTERN,
              PITCH_ACROSS,
              PITCH_UP,
              TOP_PITCH_UP,
              DENSITY,
              DENSITY_PER,
              SYMMETRY,
              SPACING,
              TOP_SPACING,
              SEED,
              COLUMNS,
              ROWS,
              SETBACK,
              KIND,
              FLANGE_SCREWS,
              HOLE,
              FLANGE,
              BARREL,
              BOLT_ZONE,
              BOLT_REACH,
              WHEN_BLOCKED,
              GREATEST_MOVE),
          List.of(new AtLeast(FLANGE, HOLE)));

  private InsertTable() {}

  /** Reports lines that are missing, or that stand beside another pattern. */
  static void checkLines(Values values, Faults faults) {
    if (!values.isSound(PATTERN)) {
      return;
    }
    boolean needed = values.get(PATTERN) == Pattern.LINES;
    if (needed && values.isSound(SYMMETRY) && values.get(SYMMETRY) != Symmetry.NONE) {
      faults.add(
          values.key(SYMMETRY),
          values.spot(SYMMETRY),
          "symmetry stands beside the pattern lines",
          "none is allowed with given lines");
    }
    for (Parameter<?> lines : List.of(COLUMNS, ROWS)) {
      if (needed && !values.isGiven(lines)) {
        faults.add(
            values.key(lines),
            values.spot(PATTERN),
            "no " + lines.key() + " are given",
            "the pattern lines needs both columns and rows");
      } else if (!needed && values.given(lines).isPresent()) {
        faults.add(
            values.key(lines),
            values.spot(lines),
            lines.key() + " stand beside the pattern " + WordKind.word(values.get(PATTERN)),
            "columns and rows are allowed with the pattern lines alone");
      }
    }
  }

  static InsertParameters record(Values values) {
    return new InsertParameters(
        values.get(PATTERN),
        values.get(PITCH_ACROSS),
        values.get(PITCH_UP),
        values.given(TOP_PITCH_UP).orElse(values.get(PITCH_UP)),
        new Density(values.get(DENSITY), values.get(DENSITY_PER)),
        values.get(SYMMETRY),
        new Scattering(
            values.get(SPACING),
            values.given(TOP_SPACING).orElse(values.get(SPACING)),
            values.get(SEED)),
        values.given(COLUMNS).orElse(List.of()),
        values.given(ROWS).orElse(List.of()),
        values.get(SETBACK),
        values.get(KIND),
        values.get(FLANGE_SCREWS),
        values.get(HOLE),
        values.get(FLANGE),
        values.get(BARREL),
        values.get(BOLT_ZONE),
        values.get(BOLT_REACH),
        values.get(WHEN_BLOCKED),
        values.get(GREATEST_MOVE));
  }
}
