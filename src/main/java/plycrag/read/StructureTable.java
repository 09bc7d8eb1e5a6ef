package plycrag.read;

import java.util.List;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.NumberKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.read.schema.WordKind;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.room.GivenStructure;
import plycrag.wall.room.GivenStructure.AnchorValues;
import plycrag.wall.room.GivenStructure.Basis;
import plycrag.wall.room.GivenStructure.Climbing;
import plycrag.wall.room.GivenStructure.Material;
import plycrag.wall.room.GivenStructure.ScrewValues;

/** The keys of {@code [structure]}. */
final class StructureTable {
  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  /** One climber, EN 12572-2:2017, 4.6, as secondary sources tell it, N. */
  private static final double CLIMBER = 800;

  private static final double NEWTONS = 1000;

  static final Parameter<Basis> BASIS =
      new Parameter<>(
          "basis",
          new WordKind<>(List.of(Basis.values())),
          DefaultValue.word(Basis.EC5),
          "By what the preliminary check of its strength reckons: EN 1990 and EN 1995-1-1, or by"
              + " nothing, and then nothing is said of it.");
  static final Parameter<Double> MASS =
      new Parameter<>(
          "climber-mass",
          new NumberKind(new Range(20, 200), "kg"),
          DefaultValue.derived("0.8 kN, which are 81.6 kg"),
          "Mass of one climber. The default is the load of EN 12572-2 as others tell it; of the men"
              + " in the open ANSUR II data more than half are heavier. An assumption.");
  static final Parameter<Double> FACTOR =
      new Parameter<>(
          "sudden-factor",
          new NumberKind(new Range(1, 10), "times the climber's weight"),
          DefaultValue.number(2),
          "By how much a climber who moves loads the wall more than one who hangs still. A weight"
              + " that is let go at rest loads it twice; a fall onto a hold more. An assumption.");
  static final Parameter<Integer> OTHERS =
      new Parameter<>(
          "still-climbers",
          new CountKind(new Range(0, 40), "climbers"),
          DefaultValue.derived("one for each 1.5 m of the face's width"),
          "Climbers who hang still beside the one who moves. An assumption.");
  static final Parameter<Double> SIDEWAYS =
      new Parameter<>(
          "sideways-part",
          new NumberKind(new Range(0, 1), "of the load"),
          DefaultValue.number(0.3),
          "The part of the moving climber's load that acts level as well: off the face, along it, or"
              + " against one that leans back or swings. An assumption.");
  static final Parameter<Double> REACH =
      new Parameter<>(
          "hold-reach",
          LengthKind.length(0, 500),
          DefaultValue.length("100 mm", "4 in"),
          "How far the tip of a hold stands off the face. An assumption.");
  static final Parameter<Double> HOLDS =
      new Parameter<>(
          "holds-mass",
          new NumberKind(new Range(0, 100), "kg on each square metre"),
          DefaultValue.number(10),
          "Mass of the holds on the face; they are left out where they would help. An assumption.");
  static final Parameter<Double> FRICTION =
      new Parameter<>(
          "friction",
          new NumberKind(new Range(0, 1), "of the weight"),
          DefaultValue.number(0.2),
          "Coefficient of friction between the timber and the floor, for sliding alone: at or below"
              + " what rules for loads on lorries print for bare timber; about 0.4 on a rubber mat."
              + " An assumption.");
  static final Parameter<Double> DEFLECTION =
      new Parameter<>(
          "deflection",
          new NumberKind(new Range(50, 1000), "as the divisor of the length"),
          DefaultValue.number(150),
          "A member bends at most its length divided by this under one climber who hangs still. EN"
              + " 1995-1-1, Table 7.2, has 300 to 500 for beams under floors and 150 to 250 for what"
              + " sticks out; a wall has no ceiling to crack. An assumption.");
  static final Parameter<String> STRENGTH_CLASS =
      new Parameter<>(
          "strength-class",
          TextKind.DESCRIPTION,
          DefaultValue.derived("timber-grade, if that is a class of EN 338"),
          "The class of EN 338 whose values hold for the timber, where its grade is of another"
              + " standard: whoever states it answers for it.");
  static final Parameter<Double> SCREW_CORE =
      new Parameter<>(
          "screw-core",
          new NumberKind(new Range(0.5, 0.9), "of the diameter"),
          DefaultValue.derived("0.64, and what depends on it would pass if that is so"),
          "The diameter of screws' core as a part of that of their thread, by their maker's sheet.");
  static final Parameter<Double> SCREW_STRENGTH =
      new Parameter<>(
          "screw-strength",
          new NumberKind(new Range(300, 1400), "N/mm2"),
          DefaultValue.derived("600, and what depends on it would pass if that is so"),
          "Tensile strength of screws' steel, by their maker's sheet.");
  static final Parameter<Double> ANCHOR_PULL = anchor("anchor-pull", "along itself");
  static final Parameter<Double> ANCHOR_SHEAR = anchor("anchor-shear", "across itself");

  static final TableSpec TABLE =
      new TableSpec(
          "structure",
          false,
          "By what the strength of the wall and its support is checked beforehand.",
          List.of(
              BASIS,
              MASS,
              FACTOR,
              OTHERS,
              SIDEWAYS,
              REACH,
              HOLDS,
              FRICTION,
              DEFLECTION,
              STRENGTH_CLASS,
              SCREW_CORE,
              SCREW_STRENGTH,
              ANCHOR_PULL,
              ANCHOR_SHEAR),
          List.of());

  private StructureTable() {}

  private static Parameter<Double> anchor(String key, String way) {
    return new Parameter<>(
        key,
        new NumberKind(new Range(0.01, 1000), "kN"),
        DefaultValue.derived("none: what an anchor has to bear is told, not judged"),
        "What one anchor bears "
            + way
            + " by its maker's table, as a design value, in what it goes into and as near to edges"
            + " and to others as it is.");
  }

  /**
   * The record.
   *
   * @param buying what the timber is to be, and where it stands
   */
  static GivenStructure record(Values values, MaterialWishes buying) {
    return new GivenStructure(
        values.get(BASIS),
        new Climbing(
            values.given(MASS).map(kilograms -> kilograms * GRAVITY).orElse(CLIMBER),
            values.get(FACTOR),
            values.get(SIDEWAYS),
            values.get(REACH),
            values.given(OTHERS)),
        values.get(HOLDS),
        values.get(FRICTION),
        values.get(DEFLECTION),
        new Material(buying.timber().grade(), values.given(STRENGTH_CLASS), buying.environment()),
        new ScrewValues(values.given(SCREW_CORE), values.given(SCREW_STRENGTH)),
        new AnchorValues(
            values.given(ANCHOR_PULL).map(kilonewtons -> kilonewtons * NEWTONS),
            values.given(ANCHOR_SHEAR).map(kilonewtons -> kilonewtons * NEWTONS)));
  }
}
