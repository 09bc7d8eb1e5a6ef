package plycrag.read;

import java.util.List;
import plycrag.catalog.StockSize;
import plycrag.read.schema.AtLeast;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.StockSizeKind;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.wall.Sheet;
import plycrag.wall.Sheet.Bond;
import plycrag.wall.Sheet.Edges;
import plycrag.wall.Sheet.Grain;
import plycrag.wall.Sheet.Lay;
import plycrag.wall.Sheet.Laying;
import plycrag.wall.Sheet.Seams;
import plycrag.wall.Sheet.Start;
import plycrag.wall.buying.MaterialWishes.Environment;

/** The keys of {@code [sheet]}. */
final class SheetTable {
  static final Parameter<StockSize> SIZE =
      new Parameter<>(
          "size",
          new StockSizeKind(),
          DefaultValue.derived("length and width"),
          "The size by its name in the catalog, instead of length and width.");
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(300, 6000),
          DefaultValue.length("2440 mm", "96 in"),
          "The longer side of a sheet as bought.");
  static final Parameter<Double> WIDTH =
      new Parameter<>(
          "width",
          LengthKind.length(300, 3000),
          DefaultValue.length("1220 mm", "48 in"),
          "The shorter side of a sheet as bought.");
  static final Parameter<Double> THICKNESS =
      new Parameter<>(
          "thickness",
          LengthKind.length(6, 40),
          DefaultValue.length("18 mm", "23/32 in"),
          "Thickness of the sheet, as measured and not as named.");
  static final Parameter<Lay> LAY =
      new Parameter<>(
          "lay",
          new WordKind<>(List.of(Lay.values())),
          DefaultValue.derived("whichever takes fewer sheets, then across"),
          "Which way the long side of a sheet runs: across the wall, or up the slope.");
  static final Parameter<Double> SEAM_GAP =
      new Parameter<>(
          "seam-gap",
          LengthKind.length(0, 10),
          DefaultValue.derived("2 mm / 1/8 in indoors, 3 mm / 1/8 in elsewhere"),
          "Gap left between neighbouring pieces, since sheets vary in size and swell; more where"
              + " the environment is damp or outdoors.");
  private static final DefaultValue<Double> GAP_INDOORS = DefaultValue.length("2 mm", "1/8 in");

  /** Common practice for panels that may get damp, no source. */
  private static final DefaultValue<Double> GAP_ELSEWHERE = DefaultValue.length("3 mm", "1/8 in");

  static final Parameter<Double> LEAST_WIDTH =
      new Parameter<>(
          "least-width",
          LengthKind.length(50, 3000),
          DefaultValue.length("300 mm", "12 in"),
          "No piece narrower than this is made where it can share with its neighbour.");

  static final Parameter<Bond> BOND =
      new Parameter<>(
          "bond",
          new WordKind<>(List.of(Bond.values())),
          DefaultValue.word(Bond.ALIGNED),
          "Whether the seams across the long side of the sheets run on from row to row, or every"
              + " second row is moved by half a sheet.");
  static final Parameter<Start> START =
      new Parameter<>(
          "start",
          new WordKind<>(List.of(Start.values())),
          DefaultValue.derived(
              "whichever leaves no piece below the least width and cuts fewest sheets"),
          "The corner of a facet where whole sheets begin.");
  static final Parameter<Grain> GRAIN =
      new Parameter<>(
          "grain",
          new WordKind<>(List.of(Grain.values())),
          DefaultValue.word(Grain.ALONG),
          "Which way the face grain runs on a sheet as bought: along its long side, or across it.");

  static final Parameter<Edges> EDGES =
      new Parameter<>(
          "edges",
          new WordKind<>(List.of(Edges.values())),
          DefaultValue.word(Edges.TRIMMED),
          "Whether every piece is trimmed true to its size, or whole sheets are set as bought.");
  static final Parameter<Double> SIZE_TOLERANCE =
      new Parameter<>(
          "size-tolerance",
          LengthKind.length(0, 10),
          DefaultValue.length("1 mm", "1/32 in"),
          "By how much a sheet as bought may be larger or smaller than stated.");
  static final Parameter<Double> SQUARENESS =
      new Parameter<>(
          "squareness",
          LengthKind.length(0, 10),
          DefaultValue.length("1 mm", "1/32 in"),
          "How far the edge of a sheet as bought may stand out of square over its width.");

  static final TableSpec TABLE =
      new TableSpec(
          "sheet",
          false,
          "The plywood as bought, and how it is laid.",
          List.of(
              SIZE,
              LENGTH,
              WIDTH,
              THICKNESS,
              LAY,
              BOND,
              START,
              GRAIN,
              SEAM_GAP,
              LEAST_WIDTH,
              EDGES,
              SIZE_TOLERANCE,
              SQUARENESS),
          List.of(new AtLeast(LENGTH, WIDTH), new AtLeast(WIDTH, LEAST_WIDTH)));

  private SheetTable() {}

  /** Reports a size that is told by name and in lengths. */
  static void check(Values values, Faults faults) {
    for (Parameter<Double> side : List.of(LENGTH, WIDTH)) {
      boolean isOwn = values.isGiven(side) && !values.place(side).equals(values.place(SIZE));
      if (values.isGiven(SIZE) && isOwn) {
        faults.add(
            values.key(side),
            values.place(side),
            "the size is told by its name already",
            "size, or length and width, is allowed");
      }
    }
  }

  /**
   * The same with the lengths of a size that is told by name, where that stands; given ones stay.
   */
  static Values sized(Values values) {
    SourcePlace place = values.place(SIZE);
    return values
        .given(SIZE)
        .map(size -> values.or(LENGTH, size.length(), place).or(WIDTH, size.width(), place))
        .orElse(values);
  }

  static Sheet record(Values values, Environment environment) {
    double drift =
        values.get(EDGES) == Edges.TRIMMED
            ? 0
            : values.get(SIZE_TOLERANCE) + values.get(SQUARENESS);
    return new Sheet(
        values.get(LENGTH),
        values.get(WIDTH),
        values.get(THICKNESS),
        new Laying(values.given(LAY), values.get(BOND), values.given(START), values.get(GRAIN)),
        new Seams(seamGap(values, environment), values.get(LEAST_WIDTH), drift));
  }

  private static double seamGap(Values values, Environment environment) {
    DefaultValue<Double> gap = environment == Environment.INDOORS ? GAP_INDOORS : GAP_ELSEWHERE;
    return values.given(SEAM_GAP).or(() -> gap.in(values.unit())).orElseThrow();
  }
}
