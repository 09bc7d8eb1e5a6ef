package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.units.LengthUnit;
import plycrag.wall.GivenWall;
import plycrag.wall.GivenWall.Behind;
import plycrag.wall.GivenWall.FoldEdges;

/** The keys of {@code [wall]}. */
final class WallTable {
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.LINE,
          DefaultValue.derived("the file's name, without its ending, hyphens as spaces"),
          "The wall's name, printed on everything.");
  static final Parameter<LengthUnit> UNIT =
      new Parameter<>(
          "unit",
          new WordKind<>(List.of(LengthUnit.values())),
          DefaultValue.word(LengthUnit.MM),
          "What bare numbers in this file mean, and what the tape on site reads.");
  static final Parameter<Double> WIDTH =
      new Parameter<>(
          "width",
          LengthKind.length(300, 50_000),
          DefaultValue.length("2400 mm", "96 in"),
          "Width of every facet that does not say otherwise.");
  static final Parameter<Double> RAISE =
      new Parameter<>(
          "raise",
          LengthKind.length(0, 3000),
          DefaultValue.length("0 mm", "0 in"),
          "Height of the lowest facet's lower edge above the floor, measured vertically.");
  static final Parameter<FoldEdges> FOLD_EDGES =
      new Parameter<>(
          "fold-edges",
          new WordKind<>(List.of(FoldEdges.values())),
          DefaultValue.word(FoldEdges.MITRED),
          "How sheets and timber end where two facets meet: cut to the bevel that halves the fold,"
              + " or square, with a strip to cover the gap, for those without a tilting saw.");
  static final Parameter<Behind> BEHIND =
      new Parameter<>(
          "behind",
          new WordKind<>(List.of(Behind.values())),
          DefaultValue.word(Behind.WALK_IN),
          "What reaches the back of the finished wall: a person, an arm, or nothing.");

  static final Parameter<Boolean> MIRRORED =
      new Parameter<>(
          "mirrored",
          new FlagKind(),
          DefaultValue.flag(false),
          "Whether all that this file and its list of positions tell is built the other way round,"
              + " left for right: facets, openings, zones, given columns and places, what stands in"
              + " the room. What is set out from the left begins on the right then, grids a setback"
              + " from there; marks are read from the new left.");

  static final TableSpec TABLE =
      new TableSpec(
          "wall",
          false,
          "The wall as a whole.",
          List.of(NAME, UNIT, WIDTH, RAISE, FOLD_EDGES, BEHIND, MIRRORED),
          List.of());

  private WallTable() {}

  static GivenWall record(Values values, String stem) {
    return new GivenWall(
        values.given(NAME).orElse(stem),
        values.get(UNIT),
        values.get(RAISE),
        values.get(FOLD_EDGES),
        values.get(BEHIND),
        values.get(MIRRORED));
  }
}
