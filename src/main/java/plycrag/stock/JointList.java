package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.FacetLayout;
import plycrag.layout.Joint;
import plycrag.params.JointParameters;
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
          "pilot_hole_mm");

  private JointList() {}

  /** A row a joint, facet by facet. */
  public static Table of(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      for (Joint joint : facet.joints()) {
        rows.add(row(joint, facet.facet().name(), checked.layout().wall()));
      }
    }
    checked.layout().support().stream()
        .flatMap(support -> support.joints().stream())
        .forEach(joint -> rows.add(row(joint, CutList.SUPPORT, checked.layout().wall())));
    return new Table("Joints of the frame", COLUMNS, rows);
  }

  private static List<Cell> row(Joint joint, String facet, Wall wall) {
    Hardware hardware = Hardware.of(joint, wall);
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
    row.addAll(sizes(hardware.kind(), wall));
    return row;
  }

  /** Diameter, length, penetration of the second member and pilot hole, where they are known. */
  private static List<Cell> sizes(Hardware.Kind kind, Wall wall) {
    Cell none = Cell.of("");
    return switch (kind) {
      case BRACKET, STRAP, HINGE -> List.of(none, none, none, none);
      case BOLT -> {
        BoltSize bolt = BoltSize.of(wall);
        Cell length = bolt.length().map(Cell::mm).orElse(none);
        yield List.of(Cell.mm(bolt.diameter()), length, none, none);
      }
      case SCREW -> {
        JointParameters screw = wall.joints();
        yield List.of(
            Cell.mm(screw.screwDiameter()),
            Cell.mm(screw.screwLength()),
            Cell.mm(screw.screwLength() - wall.frame().breadth()),
            Cell.mm(ScrewHoles.of(screw.screwDiameter(), true).pilot()));
      }
    };
  }
}
