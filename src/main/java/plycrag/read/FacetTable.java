package plycrag.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import plycrag.geometry.Trig;
import plycrag.read.schema.CornerKind;
import plycrag.read.schema.CornersKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.units.Decimal;
import plycrag.units.Printable;
import plycrag.wall.FacetPoint;
import plycrag.wall.GivenFacet;
import plycrag.wall.GivenFacet.Beside;
import plycrag.wall.ToldLength;

/** The keys of {@code [[facet]]}. */
final class FacetTable {
  /** A saw tilts to 45° (common practice, no source), which halves a fold of this, degrees. */
  private static final double GREATEST_TURN = 90;

  /** Nothing smaller is climbed on, mm. */
  static final double SMALLEST = 300;

  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          DefaultValue.derived("main if it is the only one, else facet 1, facet 2 and so on"),
          "The facet's name, printed before every mark on it; no two may share one.");
  static final Parameter<Double> ANGLE =
      new Parameter<>(
          "angle",
          new NumberKind(new Range(-15, 90), "degrees"),
          DefaultValue.number(0),
          "Angle from vertical: above zero it leans out over the climber, below zero it is a slab,"
              + " at 90 it is a roof.");
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(SMALLEST, 50_000),
          DefaultValue.length("2400 mm", "96 in"),
          "Length up the slope.");
  static final Parameter<Double> VERTICAL_HEIGHT =
      new Parameter<>(
          "vertical-height",
          LengthKind.length(1, 50_000),
          DefaultValue.derived("none: the length tells it"),
          "Height from its lower edge to its upper one, measured plumb, instead of the length: a"
              + " facet that leans is longer than it is high.");
  static final Parameter<Double> WIDTH =
      new Parameter<>(
          "width",
          LengthKind.length(SMALLEST, 50_000),
          DefaultValue.derived("wall.width"),
          "Width across, along the lower edge.");
  static final Parameter<List<FacetPoint>> OUTLINE =
      new Parameter<>(
          "outline",
          new CornersKind(CornerKind.ON_FACET, 40),
          DefaultValue.derived("a rectangle of the facet's width and length"),
          "The facet's corners in order round it, each across and up the slope, if it is no"
              + " rectangle; the lowest side lies level at 0, and the leftmost corner at 0.");
  static final Parameter<Double> SHIFT =
      new Parameter<>(
          "shift",
          LengthKind.length(-50_000, 50_000),
          DefaultValue.length("0 mm", "0 in"),
          "How far its left stands to the right of that of the facet below.");
  static final Parameter<String> BESIDE =
      new Parameter<>(
          "beside",
          TextKind.NAME,
          DefaultValue.derived("none: it stands on the facet before it"),
          "The lowest facet of the wall on whose right a new wall begins with this one, by name.");
  static final Parameter<Double> TURN =
      new Parameter<>(
          "turn",
          new NumberKind(new Range(-90, 90), "degrees"),
          DefaultValue.number(90),
          "How far the new wall is turned from that one, seen from above: above zero toward the"
              + " climber, for an inside corner; below zero for an outside one; 0 for walls side by"
              + " side, which meet where they lie in one plane. Where walls meet, each ends in the"
              + " other, whatever its width; a side that goes on higher runs straight up.");

  static final TableSpec TABLE =
      new TableSpec(
          "facet",
          true,
          "A plane of the climbing face, from the floor up, each on the one before; one is needed.",
          List.of(NAME, ANGLE, LENGTH, VERTICAL_HEIGHT, WIDTH, OUTLINE, SHIFT, BESIDE, TURN),
          List.of(),
          List.of(SupportTable.OF_FACET));

  private FacetTable() {}

  /** The records of all facets, in order. */
  static List<GivenFacet> records(List<Values> facets, double wallWidth) {
    return IntStream.range(0, facets.size())
        .mapToObj(at -> record(facets.get(at), name(facets, at), wallWidth))
        .toList();
  }

  private static GivenFacet record(Values values, String name, double wallWidth) {
    Optional<List<FacetPoint>> outline = values.given(OUTLINE);
    return new GivenFacet(
        name,
        values.get(ANGLE),
        told(values),
        outline
            .map(corners -> greatest(corners, FacetPoint::across))
            .orElse(values.given(WIDTH).orElse(wallWidth)),
        outline,
        values.get(SHIFT),
        values.given(BESIDE).map(facet -> new Beside(facet, values.get(TURN))));
  }

  private static ToldLength told(Values values) {
    ToldLength.Key other =
        values.given(VERTICAL_HEIGHT).isPresent()
            ? ToldLength.Key.VERTICAL_HEIGHT
            : ToldLength.Key.LENGTH;
    return values
        .given(OUTLINE)
        .map(corners -> new ToldLength(ToldLength.Key.OUTLINE, greatest(corners, FacetPoint::up)))
        .orElseGet(() -> new ToldLength(other, length(values)));
  }

  /** Up the slope, as told or as high as told, mm. */
  static double length(Values values) {
    return values
        .given(VERTICAL_HEIGHT)
        .map(height -> height / Trig.cos(values.get(ANGLE)))
        .orElseGet(() -> values.get(LENGTH));
  }

  private static double greatest(List<FacetPoint> corners, ToDoubleFunction<FacetPoint> place) {
    return corners.stream().mapToDouble(place).max().orElseThrow();
  }

  /** The names of all facets, in order. */
  static List<String> names(List<Values> facets) {
    return IntStream.range(0, facets.size()).mapToObj(at -> name(facets, at)).toList();
  }

  private static String name(List<Values> facets, int at) {
    String unnamed = facets.size() == 1 ? "main" : "facet " + (at + 1);
    return facets.get(at).given(NAME).orElse(unnamed);
  }

  /**
   * Reports names that two facets share, or that would name the same files: capitals, and spaces
   * against hyphens, tell nothing apart there.
   */
  static void checkNames(List<Values> facets, Faults faults) {
    Map<String, String> seen = new HashMap<>();
    for (int at = 0; at < facets.size(); at++) {
      Values facet = facets.get(at);
      String name = name(facets, at);
      String earlier =
          seen.putIfAbsent(name.toLowerCase(Locale.ROOT).replace(' ', '-'), facet.path());
      if (earlier != null) {
        faults.add(
            facet.key(NAME),
            facet.place(NAME),
            "the name " + Printable.quoted(name) + " is that of " + earlier + " too",
            "a name of its own is allowed");
      }
    }
  }

  /** Reports folds that no saw could cut. */
  static void checkFolds(List<Values> facets, Faults faults) {
    for (int at = 1; at < facets.size(); at++) {
      Values upper = facets.get(at);
      Values lower = facets.get(at - 1);
      if (!upper.isGiven(BESIDE) && upper.isSound(ANGLE) && lower.isSound(ANGLE)) {
        double turn = Math.abs(upper.get(ANGLE) - lower.get(ANGLE));
        if (turn > GREATEST_TURN) {
          faults.add(
              upper.key(ANGLE),
              upper.place(ANGLE),
              "the fold turns by " + Decimal.of(turn, 2) + " degrees from " + lower.path(),
              "a turn of at most 90 degrees is allowed, for which a saw is tilted to 45");
        }
      }
    }
  }
}
