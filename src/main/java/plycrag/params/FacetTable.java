package plycrag.params;

import java.util.List;

/** The keys of {@code [[facet]]}. */
final class FacetTable {
  static final Parameter<String> NAME =
      new Parameter<>(
          "name",
          TextKind.NAME,
          Standard.text("main"),
          "The facet's name, printed before every mark on it.");
  static final Parameter<Double> ANGLE =
      new Parameter<>(
          "angle",
          new NumberKind(new Range(-15, 60), "degrees"),
          Standard.number(0),
          "Angle from vertical: above zero it leans out over the climber, below zero it is a slab.");
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(300, 50_000),
          Standard.length("2400 mm", "96 in"),
          "Length up the slope.");
  static final Parameter<Double> WIDTH =
      new Parameter<>(
          "width", LengthKind.length(300, 50_000), Standard.derived("wall.width"), "Width across.");

  static final TableSpec TABLE =
      new TableSpec(
          "facet",
          true,
          "A plane of the climbing face; one is needed.",
          List.of(NAME, ANGLE, LENGTH, WIDTH),
          List.of());

  private FacetTable() {}

  static FacetParameters record(Values values, double wallWidth) {
    return new FacetParameters(
        values.get(NAME),
        values.get(ANGLE),
        values.get(LENGTH),
        values.given(WIDTH).orElse(wallWidth));
  }
}
