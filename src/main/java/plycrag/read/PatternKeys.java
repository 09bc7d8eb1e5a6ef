package plycrag.read;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.LengthListKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.wall.Density;
import plycrag.wall.Pattern;
import plycrag.wall.Pattern.Fit;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.Pattern.Lines;
import plycrag.wall.Pattern.Pitch;
import plycrag.wall.Pattern.Symmetry;
import plycrag.wall.Scattering;

/** The keys that tell how holes are set out, over a facet or over a zone of one. */
final class PatternKeys {
  private static final LengthListKind LINES = new LengthListKind(LengthKind.length(0, 50_000), 500);
  private static final String NEEDED = "none: needed for lines, refused with other patterns";

  static final Parameter<Kind> PATTERN =
      new Parameter<>(
          "pattern",
          new WordKind<>(List.of(Kind.values())),
          DefaultValue.word(Kind.GRID),
          "How inserts are set out: a grid, every second row moved by half a pitch, as many as make"
              + " a density, given lines, scattered without order and clear of timber and seams,"
              + " where a file of positions says, or none at all.");
  static final Parameter<Double> PITCH_ACROSS =
      new Parameter<>(
          "pitch-across",
          LengthKind.length(50, 2000),
          DefaultValue.length("200 mm", "8 in"),
          "Distance between neighbouring columns.");
  static final Parameter<Double> PITCH_UP =
      new Parameter<>(
          "pitch-up",
          LengthKind.length(50, 2000),
          DefaultValue.length("200 mm", "8 in"),
          "Distance between neighbouring rows.");
  static final Parameter<Double> TOP_PITCH_UP =
      new Parameter<>(
          "top-pitch-up",
          LengthKind.length(50, 2000),
          DefaultValue.derived("pitch-up"),
          "The same at the top of a facet, if the rows of a grid or an offset are to thin out"
              + " upward: each row is as far above the one below as the pitch is there.");
  static final Parameter<Integer> DENSITY =
      new Parameter<>(
          "density",
          new CountKind(new Range(1, 500), "inserts"),
          DefaultValue.count(25),
          "How many inserts there are to be, for the pattern density.");
  static final Parameter<Integer> TOP_DENSITY =
      new Parameter<>(
          "top-density",
          new CountKind(new Range(1, 500), "inserts"),
          DefaultValue.derived("density"),
          "The same at the top, if they are to thin out upward.");
  static final Parameter<Density.Per> DENSITY_PER =
      new Parameter<>(
          "density-per",
          new WordKind<>(List.of(Density.Per.values())),
          DefaultValue.word(Density.Per.SQUARE_METRE),
          "On what so many: a square metre of the facet, or as much of it as a stock sheet"
              + " covers.");
  static final Parameter<Symmetry> SYMMETRY =
      new Parameter<>(
          "symmetry",
          new WordKind<>(List.of(Symmetry.values())),
          DefaultValue.word(Symmetry.NONE),
          "Whether the left half of every facet mirrors the right one; studs then stay where they"
              + " are. Not with given lines, which lie where they are given.");
  static final Parameter<Double> SPACING =
      new Parameter<>(
          "scatter-spacing",
          LengthKind.length(50, 2000),
          DefaultValue.length("180 mm", "7 in"),
          "Least distance between scattered inserts; none is left out where another would fit.");
  static final Parameter<Double> TOP_SPACING =
      new Parameter<>(
          "scatter-top-spacing",
          LengthKind.length(50, 2000),
          DefaultValue.derived("scatter-spacing"),
          "The same at the top of a facet, if scattered inserts are to thin out upward.");
  static final Parameter<Integer> SEED =
      new Parameter<>(
          "scatter-seed",
          new CountKind(new Range(0, 999_999), ""),
          DefaultValue.count(1),
          "Another number makes another scatter.");
  static final Parameter<List<Double>> COLUMNS =
      new Parameter<>(
          "columns",
          LINES,
          DefaultValue.derived(NEEDED),
          "The columns, measured from the facet's left edge, for the pattern lines.");
  static final Parameter<List<Double>> ROWS =
      new Parameter<>(
          "rows",
          LINES,
          DefaultValue.derived(NEEDED),
          "The rows, measured from the facet's lower edge, for the pattern lines.");
  static final Parameter<Double> SETBACK =
      new Parameter<>(
          "setback",
          LengthKind.length(0, 1000),
          DefaultValue.length("100 mm", "4 in"),
          "Least distance of an insert's centre from the facet's outline; grids start there.");

  private PatternKeys() {}

  /** Reports lines that are missing, or that stand beside another pattern. */
  static void checkLines(Values values, Faults faults) {
    if (!values.isSound(PATTERN)) {
      return;
    }
    boolean needed = values.get(PATTERN) == Kind.LINES;
    for (Parameter<?> lines : List.of(COLUMNS, ROWS)) {
      if (needed && !values.isGiven(lines)) {
        faults.add(
            values.key(lines),
            values.place(PATTERN),
            "no " + lines.key() + " are given",
            "the pattern lines needs both columns and rows");
      } else if (!needed && values.given(lines).isPresent()) {
        faults.add(
            values.key(lines),
            values.place(lines),
            lines.key() + " stand beside the pattern " + WordKind.word(values.get(PATTERN)),
            "columns and rows are allowed with the pattern lines alone");
      }
    }
  }

  /** The pattern of the facets. */
  static Pattern ofFacets(Values values) {
    double pitchUp = values.get(PITCH_UP);
    int count = values.get(DENSITY);
    double spacing = values.get(SPACING);
    return new Pattern(
        values.get(PATTERN),
        new Pitch(values.get(PITCH_ACROSS), pitchUp, values.given(TOP_PITCH_UP).orElse(pitchUp)),
        lines(values),
        new Density(count, values.given(TOP_DENSITY).orElse(count), values.get(DENSITY_PER)),
        new Scattering(spacing, values.given(TOP_SPACING).orElse(spacing), values.get(SEED)),
        new Fit(values.get(SYMMETRY), values.get(SETBACK)));
  }

  private static Lines lines(Values values) {
    return new Lines(values.given(COLUMNS).orElse(List.of()), values.given(ROWS).orElse(List.of()));
  }

  /**
   * The pattern of a zone.
   *
   * @param facets the facets' pattern, whose measures hold where the zone says nothing
   * @param sheet a stock sheet's area, mm²
   */
  static Pattern ofZone(Values values, Pattern facets, double sheet) {
    OfZone zone = new OfZone(values, facets);
    Pattern pattern =
        new Pattern(
            values.given(PATTERN).orElse(Kind.GRID),
            zone.pitch(),
            lines(values),
            zone.density(),
            zone.scattering(),
            new Fit(Symmetry.NONE, 0));
    return pattern.withSetback(values.given(SETBACK).orElse(pattern.halfSpacing(sheet)));
  }

  /** What a zone says, or else the facets. */
  private static final class OfZone {
    private final Values values;
    private final Pattern facets;

    OfZone(Values values, Pattern facets) {
      this.values = values;
      this.facets = facets;
    }

    <T> T or(Parameter<T> parameter, Function<Pattern, T> otherwise) {
      return values.given(parameter).orElseGet(() -> otherwise.apply(facets));
    }

    /** What holds at the top: the zone's, or what the zone says of its foot, or the facets'. */
    <T> T top(Parameter<T> top, Parameter<T> foot, Function<Pattern, T> otherwise) {
      Optional<T> own = values.given(top).or(() -> values.given(foot));
      return own.orElseGet(() -> otherwise.apply(facets));
    }

    Pitch pitch() {
      return new Pitch(
          or(PITCH_ACROSS, one -> one.pitch().across()),
          or(PITCH_UP, one -> one.pitch().up()),
          top(TOP_PITCH_UP, PITCH_UP, one -> one.pitch().topUp()));
    }

    Density density() {
      return new Density(
          or(DENSITY, one -> one.density().count()),
          top(TOP_DENSITY, DENSITY, one -> one.density().topCount()),
          or(DENSITY_PER, one -> one.density().per()));
    }

    Scattering scattering() {
      return new Scattering(
          or(SPACING, one -> one.scattering().spacing()),
          top(TOP_SPACING, SPACING, one -> one.scattering().topSpacing()),
          or(SEED, one -> one.scattering().seed()));
    }
  }
}
