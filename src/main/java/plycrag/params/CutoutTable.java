package plycrag.params;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.params.CutoutParameters.Circle;
import plycrag.params.CutoutParameters.Outline;
import plycrag.params.CutoutParameters.Rectangle;
import plycrag.units.NearestWord;
import plycrag.units.Printable;

/** The keys of {@code [[cutout]]}. */
final class CutoutTable {
  private static final String NEEDED =
      "none: left, low, width and height, or centre and diameter, or an outline is needed";

  static final Parameter<String> FACET =
      new Parameter<>(
          "facet",
          TextKind.NAME,
          Standard.derived("the facet, if there is only one"),
          "The facet that it opens, by name.");
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          Standard.derived("cutout 1, cutout 2 and so on"),
          "What it is for, printed beside it: window, door, socket.");
  static final Parameter<Double> LEFT = place("left", "Where a rectangle begins, from the left.");
  static final Parameter<Double> LOW =
      place("low", "Where a rectangle begins, from the facet's lower edge, up the slope.");
  static final Parameter<Double> WIDTH = size("width", "Width of a rectangle.");
  static final Parameter<Double> HEIGHT = size("height", "Height of a rectangle, up the slope.");
  static final Parameter<Corner> CENTRE =
      new Parameter<>(
          "centre",
          CornerKind.ON_FACET,
          Standard.derived(NEEDED),
          "The middle of a circle: from the facet's left, and from its lower edge.");
  static final Parameter<Double> DIAMETER = size("diameter", "Diameter of a circle.");
  static final Parameter<List<Corner>> OUTLINE =
      new Parameter<>(
          "outline",
          new CornersKind(CornerKind.ON_FACET, 40),
          Standard.derived(NEEDED),
          "The corners of any other shape, in order round it, as for a facet.");

  static final TableSpec TABLE =
      new TableSpec(
          "cutout",
          true,
          "An opening in a facet, such as a window, a door, a post or a socket; timber is set round"
              + " it.",
          List.of(FACET, NAME, LEFT, LOW, WIDTH, HEIGHT, CENTRE, DIAMETER, OUTLINE),
          List.of());

  private static final List<List<Parameter<?>>> SHAPES =
      List.of(List.of(LEFT, LOW, WIDTH, HEIGHT), List.of(CENTRE, DIAMETER), List.of(OUTLINE));

  private CutoutTable() {}

  private static Parameter<Double> place(String key, String meaning) {
    return new Parameter<>(key, LengthKind.length(0, 50_000), Standard.derived(NEEDED), meaning);
  }

  private static Parameter<Double> size(String key, String meaning) {
    return new Parameter<>(key, LengthKind.length(10, 50_000), Standard.derived(NEEDED), meaning);
  }

  /** Reports cutouts of no facet, and such as are of no shape or of two. */
  static void check(List<Values> cutouts, List<String> facets, Faults faults) {
    cutouts.forEach(cutout -> checkShape(cutout, faults));
    cutouts.forEach(cutout -> checkFacet(cutout, facets, faults));
  }

  private static void checkFacet(Values cutout, List<String> facets, Faults faults) {
    if (!cutout.isGiven(FACET) && facets.size() > 1) {
      faults.add(cutout.key(FACET), firstSpot(cutout), "this cutout names no facet", words(facets));
    }
    cutout
        .given(FACET)
        .filter(name -> !facets.contains(name))
        .ifPresent(
            name ->
                faults.add(
                    cutout.key(FACET),
                    cutout.spot(FACET),
                    "there is no facet " + Printable.quoted(name),
                    words(facets),
                    NearestWord.find(name, facets)
                        .map(near -> "the nearest facet is " + near)
                        .orElse("")));
  }

  private static String words(List<String> facets) {
    return "one of " + String.join(", ", facets) + " is allowed";
  }

  private static void checkShape(Values cutout, Faults faults) {
    Set<Parameter<?>> given =
        SHAPES.stream().flatMap(List::stream).filter(cutout::isGiven).collect(Collectors.toSet());
    boolean whole = SHAPES.stream().anyMatch(shape -> given.equals(Set.copyOf(shape)));
    if (!whole) {
      faults.add(
          cutout.path(),
          firstSpot(cutout),
          given.isEmpty() ? "this cutout has no shape" : "this cutout's shape is not told",
          "left, low, width and height, or centre and diameter, or an outline is allowed");
    }
  }

  /** Where the first key of those that stand there stands. */
  private static Spot firstSpot(Values cutout) {
    return TABLE.parameters().stream()
        .filter(cutout::isGiven)
        .findFirst()
        .map(cutout::spot)
        .orElse(Spot.START);
  }

  /** The records, in order. */
  static List<CutoutParameters> records(List<Values> cutouts, List<String> facets) {
    return IntStream.range(0, cutouts.size())
        .mapToObj(at -> record(cutouts.get(at), at, facets))
        .toList();
  }

  private static CutoutParameters record(Values values, int at, List<String> facets) {
    return new CutoutParameters(
        values.given(FACET).orElse(facets.get(0)),
        values.given(NAME).orElse("cutout " + (at + 1)),
        shape(values));
  }

  private static CutoutParameters.Shape shape(Values values) {
    if (values.isGiven(OUTLINE)) {
      return new Outline(values.get(OUTLINE));
    }
    return values.isGiven(CENTRE)
        ? new Circle(values.get(CENTRE), values.get(DIAMETER))
        : new Rectangle(values.get(LEFT), values.get(LOW), values.get(WIDTH), values.get(HEIGHT));
  }
}
