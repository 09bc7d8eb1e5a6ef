package plycrag.lists;

import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.sheets.MachinedHole;

/** Every machined hole: the table that every other file agrees with. */
public final class HoleTable {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "facet",
          "piece",
          "sheet",
          "kind",
          "u_mm",
          "v_mm",
          "sheet_x_mm",
          "sheet_y_mm",
          "diameter_mm",
          "depth_mm",
          "side");

  private HoleTable() {}

  /** A row a hole, sheet by sheet and face by face; those for pins belong to no piece. */
  public static Table of(CheckedLayout checked) {
    return new Table(
        "Holes", COLUMNS, checked.layout().machined().stream().map(HoleTable::row).toList());
  }

  private static List<Cell> row(MachinedHole hole) {
    return List.of(
        Cell.of(hole.mark()),
        Cell.of(hole.marks().facet()),
        Cell.of(hole.marks().piece()),
        Cell.of(hole.marks().sheet()),
        Cell.of(hole.kind().word()),
        Cell.mm(hole.place().getX()),
        Cell.mm(hole.place().getY()),
        Cell.mm(hole.spot().x()),
        Cell.mm(hole.spot().y()),
        Cell.mm(hole.bore().diameter()),
        Cell.mm(hole.bore().depth()),
        Cell.of(hole.bore().side().word()));
  }
}
