package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Gusset;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.LapScrews;
import plycrag.units.Decimal;
import plycrag.wall.JointFasteners;
import plycrag.wall.Wall;

/** Every joint of the frame with what it takes. */
public final class JointList {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "facet",
          "joint",
          "first",
          "second",
          "u_mm",
          "v_mm",
          "hardware",
          "quantity",
          "diameter_mm",
          "length_mm",
          "penetration_mm",
          "pilot_hole_mm",
          "steel_mm",
          "bend_deg",
          "screws_each",
          "screw_along_mm",
          "screw_across_mm",
          "held_by");

  private static final Cell NONE = Cell.of("");

  private JointList() {}

  /** A row a joint, facet by facet. */
  public static Table of(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      for (Joint joint : facet.joints()) {
        rows.add(row(joint, facet.facet().name(), checked.layout()));
      }
    }
    checked.layout().support().stream()
        .flatMap(support -> support.joints().stream())
        .forEach(joint -> rows.add(row(joint, CutList.SUPPORT, checked.layout())));
    return new Table("Joints of the frame", COLUMNS, rows);
  }

  private static List<Cell> row(Joint joint, String facet, Layout layout) {
    JointHardware hardware = JointHardware.of(joint, layout);
    List<Cell> row = new ArrayList<>();
    row.addAll(
        List.of(
            Cell.of(joint.mark()),
            Cell.of(facet),
            Cell.of(joint.kind().words()),
            Cell.of(joint.first()),
            Cell.of(joint.second()),
            Cell.mm(joint.place().getX()),
            Cell.mm(joint.place().getY()),
            Cell.of(hardware.kind().word()),
            Cell.of(hardware.count())));
    row.addAll(sizes(joint, hardware, layout.wall()));
    row.addAll(steel(hardware));
    row.addAll(places(layout.fixings().throughOf(joint)));
    row.add(Cell.of(heldBy(hardware)));
    return row;
  }

  /** The marks of the gussets, or of the members beside it. */
  private static String heldBy(JointHardware hardware) {
    List<String> gussets = hardware.gussets().stream().map(Gusset::mark).toList();
    return String.join(" ", gussets.isEmpty() ? hardware.others() : gussets);
  }

  /** Diameter, length, penetration of the second member and pilot hole, where they are known. */
  private static List<Cell> sizes(Joint joint, JointHardware hardware, Wall wall) {
    return switch (hardware.kind()) {
      case BRACKET, STRAP, HINGE -> {
        double sheet = joint.kind() == Joint.Kind.HINGE ? wall.sheet().thickness() : 0;
        yield hardware
            .steel()
            .map(fit -> screw(fit.diameter(), fit.length(), fit.bite(sheet)))
            .orElse(List.of(NONE, NONE, NONE, NONE));
      }
      case BOLT -> {
        BoltSize bolt = BoltSize.of(wall);
        Cell length = bolt.length().map(Cell::mm).orElse(NONE);
        yield List.of(Cell.mm(bolt.diameter()), length, NONE, NONE);
      }
      case SCREW -> {
        JointFasteners screw = wall.joints();
        double bite = screw.screws().length() - wall.frame().breadth();
        yield screw(screw.screws().diameter(), screw.screws().length(), bite);
      }
      case GUSSET -> {
        GussetFit fit = hardware.gussets().get(0).fit();
        double bite = fit.screwLength() - wall.sheet().thickness();
        yield screw(fit.diameter(), fit.screwLength(), bite);
      }
      case OTHERS -> List.of(NONE, NONE, NONE, NONE);
    };
  }

  private static List<Cell> screw(double diameter, double length, double bite) {
    double pilot = ScrewDrilling.of(diameter, true).pilot();
    return List.of(Cell.mm(diameter), Cell.mm(length), Cell.mm(bite), Cell.mm(pilot));
  }

  /** Size, bend and screws of each bracket, strap or hinge. */
  private static List<Cell> steel(JointHardware hardware) {
    return hardware
        .steel()
        .map(
            fit ->
                List.of(
                    Cell.of(SteelSize.millimetres(fit.steel())),
                    fit.steel().shape() == Shape.ANGLE ? Cell.number(fit.angle(), 1) : NONE,
                    Cell.of(fit.screws())))
        .orElse(List.of(NONE, NONE, NONE));
  }

  /** Where screws between members are, in order. */
  private static List<Cell> places(Optional<LapScrews> screws) {
    return screws
        .map(
            found ->
                List.of(
                    places(found.spots().stream().map(FacePlace::along)),
                    places(found.spots().stream().map(FacePlace::across))))
        .orElse(List.of(NONE, NONE));
  }

  private static Cell places(Stream<Double> each) {
    return Cell.of(each.map(one -> Decimal.of(one, 4)).collect(Collectors.joining(" ")));
  }
}
