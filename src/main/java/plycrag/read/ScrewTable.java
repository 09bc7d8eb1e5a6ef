package plycrag.read;

import java.util.List;
import plycrag.catalog.SoldScrew.Use;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.FlagKind;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.wall.ScrewReach;
import plycrag.wall.Screws;

/** The keys of {@code [screws]}. */
final class ScrewTable {
  static final Parameter<Double> DIAMETER =
      new Parameter<>(
          "diameter",
          LengthKind.length(2, 12),
          DefaultValue.length("4.5 mm", "0.19 in"),
          "Diameter of the thread; in inch files a number 10 screw (ASME B18.6.1).");
  static final Parameter<Double> LENGTH =
      new Parameter<>(
          "length",
          LengthKind.length(10, 300),
          DefaultValue.length("50 mm", "2 in"),
          "Length under the head; where it is left out and the default does not hold or comes out of the"
              + " timber, the shortest of the catalogue that does neither.");
  static final Parameter<Boolean> PREDRILLED =
      new Parameter<>(
          "predrilled",
          new FlagKind(),
          DefaultValue.flag(true),
          "Whether the timber gets a pilot hole; without one it splits sooner near edges and ends.");
  static final Parameter<Double> EDGE_SPACING =
      new Parameter<>(
          "edge-spacing",
          LengthKind.length(25, 1200),
          DefaultValue.length("150 mm", "6 in"),
          "Greatest distance between screws along the edges of a piece.");
  static final Parameter<Double> FIELD_SPACING =
      new Parameter<>(
          "field-spacing",
          LengthKind.length(25, 1200),
          DefaultValue.length("300 mm", "12 in"),
          "Greatest distance between screws along the members inside a piece.");

  static final TableSpec TABLE =
      new TableSpec(
          "screws",
          false,
          "The screws that hold the sheets to the framing.",
          List.of(DIAMETER, LENGTH, PREDRILLED, EDGE_SPACING, FIELD_SPACING),
          List.of());

  private ScrewTable() {}

  /** The screws at a length that does, unless the file gives one. */
  static Screws reaching(Values values, Screws screws, ScrewReach reach) {
    double length = values.given(LENGTH).orElse(chosen(screws, reach));
    return new Screws(
        screws.diameter(),
        length,
        screws.predrilled(),
        screws.edgeSpacing(),
        screws.fieldSpacing());
  }

  private static double chosen(Screws screws, ScrewReach reach) {
    return reach.choose(screws.length(), Use.SHEET, screws.diameter());
  }

  static Screws record(Values values) {
    return new Screws(
        values.get(DIAMETER),
        values.get(LENGTH),
        values.get(PREDRILLED),
        values.get(EDGE_SPACING),
        values.get(FIELD_SPACING));
  }
}
