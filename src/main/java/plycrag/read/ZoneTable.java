package plycrag.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.read.text.Faults;
import plycrag.units.Printable;
import plycrag.wall.GivenZone;
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Pattern;
import plycrag.wall.Pattern.Kind;

/** The keys of {@code [[zone]]}. */
final class ZoneTable {
  private static final String AS_FACETS = "as [inserts] has it";

  static final Parameter<String> FACET =
      new Parameter<>(
          "facet",
          TextKind.NAME,
          DefaultValue.derived("the facet, if there is only one"),
          "The facet that it lies on, by name.");
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          DefaultValue.derived("zone 1, zone 2 and so on"),
          "What it is called, printed beside it.");
  static final Parameter<Points> POINTS =
      new Parameter<>(
          "points",
          new WordKind<>(List.of(Points.values())),
          DefaultValue.word(Points.INSERTS),
          "What its pattern tells the places of: inserts, instead of the facet's own; or plain"
              + " screws of holds that are screwed on, marked between the inserts and not"
              + " drilled.");
  static final Parameter<Kind> PATTERN =
      new Parameter<>(
          "pattern",
          new WordKind<>(Stream.of(Kind.values()).filter(kind -> kind != Kind.FILE).toList()),
          DefaultValue.word(Kind.GRID),
          "How they are set out, as in [inserts]; places are measured from the left and the lower"
              + " edge of the zone. Where zones overlap, the later one has the place.");
  static final Parameter<Double> SETBACK =
      new Parameter<>(
          "setback",
          LengthKind.length(0, 1000),
          DefaultValue.derived("half of what lies between neighbours; 0 for lines"),
          "Least distance of a centre from the zone's outline; grids start there.");

  static final TableSpec TABLE =
      new TableSpec(
          "zone",
          true,
          "A part of a facet with a pattern of its own.",
          AreaKeys.between(
              List.of(FACET, NAME),
              List.of(
                  POINTS,
                  PATTERN,
                  asFacets(PatternKeys.PITCH_ACROSS),
                  asFacets(PatternKeys.PITCH_UP),
                  asFacets(PatternKeys.TOP_PITCH_UP),
                  asFacets(PatternKeys.DENSITY),
                  asFacets(PatternKeys.TOP_DENSITY),
                  asFacets(PatternKeys.DENSITY_PER),
                  asFacets(PatternKeys.SPACING),
                  asFacets(PatternKeys.TOP_SPACING),
                  asFacets(PatternKeys.SEED),
                  PatternKeys.COLUMNS,
                  PatternKeys.ROWS,
                  SETBACK)),
          List.of());

  private static final AreaKeys AREA = new AreaKeys("zone", FACET);

  private ZoneTable() {}

  private static <T> Parameter<T> asFacets(Parameter<T> parameter) {
    return new Parameter<>(
        parameter.key(), parameter.kind(), DefaultValue.derived(AS_FACETS), parameter.meaning());
  }

  /** Reports zones of no facet or no shape, and lines that are missing or not asked for. */
  static void check(List<Values> zones, List<String> facets, Faults faults) {
    AREA.check(zones, facets, faults);
    zones.forEach(zone -> PatternKeys.checkLines(zone, faults));
    Map<String, Values> seen = new HashMap<>();
    for (int at = 0; at < zones.size(); at++) {
      Values zone = zones.get(at);
      Values earlier = seen.putIfAbsent(name(zone, at), zone);
      if (earlier != null) {
        faults.add(
            zone.key(NAME),
            zone.place(NAME),
            "the name "
                + Printable.quoted(name(zone, at))
                + " is that of "
                + earlier.path()
                + " too",
            "a name of its own is allowed");
      }
    }
  }

  private static String name(Values zone, int at) {
    return zone.given(NAME).orElse("zone " + (at + 1));
  }

  /**
   * The records, in order.
   *
   * @param pattern of the facets
   * @param sheet a stock sheet's area, mm²
   */
  static List<GivenZone> records(
      List<Values> zones, List<String> facets, Pattern pattern, double sheet) {
    return IntStream.range(0, zones.size())
        .mapToObj(
            at ->
                new GivenZone(
                    AREA.facetOf(zones.get(at), facets),
                    name(zones.get(at), at),
                    AreaKeys.shape(zones.get(at)),
                    zones.get(at).get(POINTS),
                    PatternKeys.ofZone(zones.get(at), pattern, sheet)))
        .toList();
  }
}
