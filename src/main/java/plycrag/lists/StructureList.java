package plycrag.lists;

import java.util.List;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.StructureLine;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.units.Significant;

/**
 * What the preliminary check of strength found, for a spreadsheet: three significant figures, so
 * that they can be redone by hand and are the same everywhere.
 */
public final class StructureList {
  private static final List<String> COLUMNS =
      List.of(
          "part",
          "check",
          "clause",
          "case",
          "demand",
          "capacity",
          "unit",
          "utilisation",
          "status",
          "source");
  private static final Cell NONE = Cell.of("");

  private StructureList() {}

  /** A row a line; none where no check was made. */
  public static Table of(CheckedLayout checked) {
    return new Table(
        "Preliminary check of strength",
        COLUMNS,
        checked.structure().lines().stream().map(StructureList::row).toList());
  }

  private static List<Cell> row(StructureLine line) {
    return List.of(
        Cell.of(line.part()),
        Cell.of(line.check()),
        Cell.of(line.clause()),
        Cell.of(line.loadCase()),
        number(line.demand()),
        number(line.capacity()),
        Cell.of(line.unit()),
        number(line.utilisation()),
        Cell.of(line.status().words()),
        Cell.of(line.source()));
  }

  private static Cell number(Optional<Double> value) {
    return value.map(StructureList::number).orElse(NONE);
  }

  private static Cell number(double value) {
    return Cell.number(value, Significant.decimals(value));
  }
}
