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
        Cell.of(hole.facet()),
        Cell.of(hole.piece()),
        Cell.of(hole.sheet()),
        Cell.of(hole.kind().word()),
        Cell.mm(hole.place().getX()),
        Cell.mm(hole.place().getY()),
        Cell.mm(hole.x()),
        Cell.mm(hole.y()),
        Cell.mm(hole.diameter()),
        Cell.mm(hole.depth()),
        Cell.of(hole.side().word()));
  }
}
