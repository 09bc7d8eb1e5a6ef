package plycrag.read;

import java.util.List;
import plycrag.catalog.SoldScrew.Use;
import plycrag.catalog.SteelCatalog;
import plycrag.read.schema.CountKind;
import plycrag.read.schema.DefaultValue;
import plycrag.read.schema.LengthKind;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Range;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TextKind;
import plycrag.read.schema.Values;
import plycrag.wall.JointFasteners;
import plycrag.wall.JointFasteners.Bolts;
import plycrag.wall.JointFasteners.JoiningScrews;
import plycrag.wall.JointFasteners.Steel;
import plycrag.wall.ScrewReach;

/** The keys of {@code [joints]}. */
final class JointTable {
  static final Parameter<Integer> BRACKET_SCREWS =
      new Parameter<>(
          "bracket-screws",
          new CountKind(new Range(2, 40), "screws"),
          DefaultValue.count(8),
          "Screws in each bracket where one member ends on another, half of them in each leg; a bracket"
              + " of the catalogue that takes so many is chosen.");
  static final Parameter<Double> BOLT_DIAMETER =
      new Parameter<>(
          "bolt-diameter",
          LengthKind.length(6, 24),
          DefaultValue.length("10 mm", "3/8 in"),
          "Diameter of the bolts through the two plates at a mitred fold.");
  static final Parameter<Double> BOLT_SPACING =
      new Parameter<>(
          "bolt-spacing",
          LengthKind.length(100, 1200),
          DefaultValue.length("600 mm", "24 in"),
          "Greatest distance between those bolts.");
  static final Parameter<Double> SCREW_DIAMETER =
      new Parameter<>(
          "screw-diameter",
          LengthKind.length(3, 12),
          DefaultValue.length("5 mm", "0.19 in"),
          "Diameter of the screws that join members side by side.");
  static final Parameter<Double> SCREW_LENGTH =
      new Parameter<>(
          "screw-length",
          LengthKind.length(20, 400),
          DefaultValue.length("80 mm", "2 3/4 in"),
          "Length of those screws; where it is left out and the default does not hold or comes out of the"
              + " second member, the shortest of the catalogue that does neither.");
  static final Parameter<Double> SCREW_SPACING =
      new Parameter<>(
          "screw-spacing",
          LengthKind.length(50, 1200),
          DefaultValue.length("300 mm", "12 in"),
          "Greatest distance between those screws.");

  static final Parameter<String> CATALOGUE =
      new Parameter<>(
          "catalogue",
          TextKind.CSV_FILE,
          DefaultValue.derived(
              "none: brackets, straps and hinges are asked for by what they must be"),
          "The brackets, straps and hinges that you can buy, beside this file or in a folder from"
              + " there; they are taken first wherever they fit. Its columns are shape (angle, strap"
              + " or hinge), article, leg, width, thickness, holes, lines, first, pitch, gauge and"
              + " screw.");

  static final TableSpec TABLE =
      new TableSpec(
          "joints",
          false,
          "What holds the members of the frame together.",
          List.of(
              BRACKET_SCREWS,
              BOLT_DIAMETER,
              BOLT_SPACING,
              SCREW_DIAMETER,
              SCREW_LENGTH,
              SCREW_SPACING,
              CATALOGUE),
          List.of());

  private JointTable() {}

  static JointFasteners record(Values values, double breadth) {
    double diameter = values.get(SCREW_DIAMETER);
    ScrewReach reach = ScrewReach.sideBySide(breadth, diameter);
    double usual = reach.choose(values.get(SCREW_LENGTH), Use.MEMBER, diameter);
    return new JointFasteners(
        values.get(BRACKET_SCREWS),
        new Bolts(values.get(BOLT_DIAMETER), values.get(BOLT_SPACING)),
        new JoiningScrews(
            diameter, values.given(SCREW_LENGTH).orElse(usual), values.get(SCREW_SPACING)),
        new Steel(values.given(CATALOGUE), SteelCatalog.BY_REQUIREMENT));
  }
}
