package plycrag.read;

import java.util.List;
import java.util.stream.IntStream;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.text.Faults;
import plycrag.wall.GivenCutout;

/** The keys of {@code [[cutout]]}. */
final class CutoutTable {
  static final Parameter<String> FACET =
      new Parameter<>(
          "facet",
          TextKind.NAME,
          DefaultValue.derived("the facet, if there is only one"),
          "The facet that it opens, by name.");
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          DefaultValue.derived("cutout 1, cutout 2 and so on"),
          "What it is for, printed beside it: window, door, socket.");
  static final Parameter<Boolean> FILLED =
      new Parameter<>(
          "filled",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether something fills it, such as a post or a pipe, so that no head fits in.");

  static final TableSpec TABLE =
      new TableSpec(
          "cutout",
          true,
          "An opening in a facet, such as a window, a door, a post or a socket; timber is set round"
              + " it.",
          AreaKeys.between(List.of(FACET, NAME), List.of(FILLED)),
          List.of());

  private static final AreaKeys AREA = new AreaKeys("cutout", FACET);

  private CutoutTable() {}

  /** Reports cutouts of no facet, and such as are of no shape or of two. */
  static void check(List<Values> cutouts, List<String> facets, Faults faults) {
    AREA.check(cutouts, facets, faults);
  }

  /** The records, in order. */
  static List<GivenCutout> records(List<Values> cutouts, List<String> facets) {
    return IntStream.range(0, cutouts.size())
        .mapToObj(at -> record(cutouts.get(at), at, facets))
        .toList();
  }

  private static GivenCutout record(Values values, int at, List<String> facets) {
    return new GivenCutout(
        AREA.facetOf(values, facets),
        values.given(NAME).orElse("cutout " + (at + 1)),
        AreaKeys.shape(values),
        values.get(FILLED));
  }
}
