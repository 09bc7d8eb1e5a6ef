package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.FacetLayout;
import plycrag.layout.Joint;

/** Every joint of the frame with what it takes. */
public final class JointList {
  private static final List<String> COLUMNS =
      List.of("mark", "facet", "joint", "first", "second", "u_mm", "v_mm", "hardware", "quantity");

  private JointList() {}

  /** A row a joint, facet by facet. */
  public static Table of(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      for (Joint joint : facet.joints()) {
        Hardware hardware = Hardware.of(joint, checked.layout().wall());
        rows.add(
            List.of(
                Cell.of(joint.mark()),
                Cell.of(facet.facet().name()),
                Cell.of(joint.kind().words()),
                Cell.of(joint.first()),
                Cell.of(joint.second()),
                Cell.mm(joint.place().getX()),
                Cell.mm(joint.place().getY()),
                Cell.of(hardware.kind().word()),
                Cell.of(hardware.count())));
      }
    }
    return new Table("Joints of the frame", COLUMNS, rows);
  }
}
