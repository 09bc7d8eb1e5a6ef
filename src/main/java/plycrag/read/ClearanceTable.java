package plycrag.read;

import java.util.List;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.Values;
import plycrag.wall.Clearances;
import plycrag.wall.Clearances.Flange;
import plycrag.wall.Clearances.Screw;
import plycrag.wall.Clearances.ScrewPoint;
import plycrag.wall.Screws;

/** The keys of {@code [clearance]}. */
final class ClearanceTable {
  private static final LengthKind DISTANCE = LengthKind.length(0, 200);
  private static final double EDGE_PREDRILLED = 3;
  private static final double EDGE = 5;
  private static final double END_PREDRILLED = 7;
  private static final double END = 10;
  private static final double PENETRATION = 6;
  private static final String EDGE_WORDS = "3 screw diameters, 5 if not predrilled";

  static final Parameter<Double> INSERT_TO_TIMBER =
      new Parameter<>(
          "insert-to-timber",
          DISTANCE,
          DefaultValue.length("4 mm", "5/32 in"),
          "From an insert's flange to the timber behind; a stud can stand a few millimetres off its"
              + " line and the flange must still lie flat.");
  static final Parameter<Double> BOLT_TO_TIMBER =
      new Parameter<>(
          "bolt-to-timber",
          DISTANCE,
          DefaultValue.length("2 mm", "1/16 in"),
          "From the bolt zone to the timber behind; little, since the zone is wider than the bolt.");
  static final Parameter<Double> INSERT_TO_EDGE =
      new Parameter<>(
          "insert-to-edge",
          DISTANCE,
          DefaultValue.length("12 mm", "1/2 in"),
          "From an insert's flange to the edge of its piece; about a barrel's width of whole wood, so"
              + " that the edge does not break out.");
  static final Parameter<Double> INSERT_TO_INSERT =
      new Parameter<>(
          "insert-to-insert",
          DISTANCE,
          DefaultValue.length("10 mm", "3/8 in"),
          "Between the flanges of two inserts; room to hammer one in without lifting the other.");
  static final Parameter<Double> SCREW_TO_INSERT =
      new Parameter<>(
          "screw-to-insert",
          DISTANCE,
          DefaultValue.length("5 mm", "3/16 in"),
          "From a screw's thread to an insert's flange; a screw driven askew must not meet steel.");
  static final Parameter<Double> SCREW_TO_SHEET_EDGE =
      new Parameter<>(
          "screw-to-sheet-edge",
          DISTANCE,
          DefaultValue.derived(EDGE_WORDS),
          "From a screw's centre to the edge of its piece; EN 1995-1-1 Table 8.2, unloaded edge.");
  static final Parameter<Double> SCREW_TO_MEMBER_EDGE =
      new Parameter<>(
          "screw-to-member-edge",
          DISTANCE,
          DefaultValue.derived(EDGE_WORDS),
          "From a screw's centre to the edge of its member; EN 1995-1-1 Table 8.2, unloaded edge.");
  static final Parameter<Double> SCREW_TO_MEMBER_END =
      new Parameter<>(
          "screw-to-member-end",
          DISTANCE,
          DefaultValue.derived("7 screw diameters, 10 if not predrilled"),
          "From a screw's centre to the end of its member; EN 1995-1-1 Table 8.2, unloaded end.");
  static final Parameter<Double> SCREW_PENETRATION =
      new Parameter<>(
          "screw-penetration",
          DISTANCE,
          DefaultValue.derived("6 screw diameters"),
          "Of a screw into the timber; EN 1995-1-1 8.7.2 counts no screw that goes in less.");
  static final Parameter<Double> SCREW_TO_FAR_SIDE =
      new Parameter<>(
          "screw-to-far-side",
          DISTANCE,
          DefaultValue.length("5 mm", "3/16 in"),
          "From a screw's point to the far side of the timber; a point that comes out tears hands.");
  static final Parameter<Double> BARREL_TO_FACE =
      new Parameter<>(
          "barrel-to-face",
          DISTANCE,
          DefaultValue.length("1 mm", "1/16 in"),
          "From the end of an insert's barrel to the climbing face; a hold must bear on the wood, and"
              + " the thread must not stand out.");

  static final TableSpec TABLE =
      new TableSpec(
          "clearance",
          false,
          "The least distances that must remain.",
          List.of(
              INSERT_TO_TIMBER,
              BOLT_TO_TIMBER,
              INSERT_TO_EDGE,
              INSERT_TO_INSERT,
              SCREW_TO_INSERT,
              SCREW_TO_SHEET_EDGE,
              SCREW_TO_MEMBER_EDGE,
              SCREW_TO_MEMBER_END,
              SCREW_PENETRATION,
              SCREW_TO_FAR_SIDE,
              BARREL_TO_FACE),
          List.of());

  private ClearanceTable() {}

  static Clearances record(Values values, Screws screws) {
    return new Clearances(
        new Flange(
            values.get(INSERT_TO_TIMBER), values.get(INSERT_TO_EDGE), values.get(INSERT_TO_INSERT)),
        values.get(BOLT_TO_TIMBER),
        values.get(BARREL_TO_FACE),
        screw(values, screws),
        new ScrewPoint(
            values.given(SCREW_PENETRATION).orElse(PENETRATION * screws.diameter()),
            values.get(SCREW_TO_FAR_SIDE)));
  }

  private static Screw screw(Values values, Screws screws) {
    double edge = screws.diameter() * (screws.predrilled() ? EDGE_PREDRILLED : EDGE);
    double end = screws.diameter() * (screws.predrilled() ? END_PREDRILLED : END);
    return new Screw(
        values.get(SCREW_TO_INSERT),
        values.given(SCREW_TO_SHEET_EDGE).orElse(edge),
        values.given(SCREW_TO_MEMBER_EDGE).orElse(edge),
        values.given(SCREW_TO_MEMBER_END).orElse(end));
  }
}
