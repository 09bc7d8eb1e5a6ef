package plycrag.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plycrag.read.schema.CornerKind;
import plycrag.read.schema.CornersKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.units.NearestWord;
import plycrag.units.Printable;
import plycrag.wall.FacetPoint;
import plycrag.wall.FacetShape;
import plycrag.wall.FacetShape.Circle;
import plycrag.wall.FacetShape.Outline;
import plycrag.wall.FacetShape.Rectangle;

/**
 * The keys that tell a part of a facet: which facet, and a rectangle, a circle or any other shape.
 */
final class AreaKeys {
  private static final String NEEDED =
      "none: left, low, width and height, or centre and diameter, or an outline is needed";

  static final Parameter<Double> LEFT = place("left", "Where a rectangle begins, from the left.");
  static final Parameter<Double> LOW =
      place("low", "Where a rectangle begins, from the facet's lower edge, up the slope.");
  static final Parameter<Double> WIDTH = size("width", "Width of a rectangle.");
  static final Parameter<Double> HEIGHT = size("height", "Height of a rectangle, up the slope.");
  static final Parameter<FacetPoint> CENTRE =
      new Parameter<>(
          "centre",
          CornerKind.ON_FACET,
          DefaultValue.derived(NEEDED),
          "The middle of a circle: from the facet's left, and from its lower edge.");
  static final Parameter<Double> DIAMETER = size("diameter", "Diameter of a circle.");
  static final Parameter<List<FacetPoint>> OUTLINE =
      new Parameter<>(
          "outline",
          new CornersKind(CornerKind.ON_FACET, 40),
          DefaultValue.derived(NEEDED),
          "The corners of any other shape, in order round it, as for a facet.");

  private static final List<List<Parameter<?>>> SHAPES =
      List.of(List.of(LEFT, LOW, WIDTH, HEIGHT), List.of(CENTRE, DIAMETER), List.of(OUTLINE));

  private final String thing;
  private final Parameter<String> facet;

  /**
   * The keys of one table of areas.
   *
   * @param thing what lies there, in a word
   * @param facet which facet it is
   */
  AreaKeys(String thing, Parameter<String> facet) {
    this.thing = thing;
    this.facet = facet;
  }

  /** The keys of its shape, in the order in which a user reads them. */
  static List<Parameter<?>> shapes() {
    return SHAPES.stream().flatMap(List::stream).toList();
  }

  /**
   * The keys of a table with such an area.
   *
   * @param first before the shape
   * @param last after it
   */
  static List<Parameter<?>> between(List<Parameter<?>> first, List<Parameter<?>> last) {
    List<Parameter<?>> keys = new ArrayList<>(first);
    keys.addAll(shapes());
    keys.addAll(last);
    return keys;
  }

  private static Parameter<Double> place(String key, String meaning) {
    return new Parameter<>(
        key, LengthKind.length(0, 50_000), DefaultValue.derived(NEEDED), meaning);
  }

  private static Parameter<Double> size(String key, String meaning) {
    return new Parameter<>(
        key, LengthKind.length(10, 50_000), DefaultValue.derived(NEEDED), meaning);
  }

  /** Reports areas of no facet, and such as are of no shape or of two. */
  void check(List<Values> areas, List<String> facets, Faults faults) {
    areas.forEach(area -> checkShape(area, faults));
    areas.forEach(area -> checkFacet(area, facets, faults));
  }

  private void checkFacet(Values area, List<String> facets, Faults faults) {
    if (!area.isGiven(facet) && facets.size() > 1) {
      faults.add(
          area.key(facet), firstPlace(area), "this " + thing + " names no facet", words(facets));
    }
    area.given(facet)
        .filter(name -> !facets.contains(name))
        .ifPresent(
            name ->
                faults.add(
                    area.key(facet),
                    area.place(facet),
                    "there is no facet " + Printable.quoted(name),
                    words(facets),
                    NearestWord.find(name, facets)
                        .map(near -> "the nearest facet is " + near)
                        .orElse("")));
  }

  private static String words(List<String> facets) {
    return "one of " + String.join(", ", facets) + " is allowed";
  }

  private void checkShape(Values area, Faults faults) {
    Set<Parameter<?>> given = shapes().stream().filter(area::isGiven).collect(Collectors.toSet());
    boolean whole = SHAPES.stream().anyMatch(shape -> given.equals(Set.copyOf(shape)));
    if (!whole) {
      faults.add(
          area.path(),
          firstPlace(area),
          given.isEmpty()
              ? "this " + thing + " has no shape"
              : "this " + thing + "'s shape is not told",
          "left, low, width and height, or centre and diameter, or an outline is allowed");
    }
  }

  /** Where the first key of those that stand there stands. */
  private static SourcePlace firstPlace(Values area) {
    return area.entries().values().stream()
        .map(Values.Entry::place)
        .min(Comparator.comparingInt(SourcePlace::line).thenComparingInt(SourcePlace::column))
        .orElse(SourcePlace.START);
  }

  /** The name of the facet that it lies on. */
  String facetOf(Values area, List<String> facets) {
    return area.given(facet).orElse(facets.get(0));
  }

  /** Where it lies on its facet. */
  static FacetShape shape(Values values) {
    if (values.isGiven(OUTLINE)) {
      return new Outline(values.get(OUTLINE));
    }
    return values.isGiven(CENTRE)
        ? new Circle(values.get(CENTRE), values.get(DIAMETER))
        : new Rectangle(values.get(LEFT), values.get(LOW), values.get(WIDTH), values.get(HEIGHT));
  }
}
