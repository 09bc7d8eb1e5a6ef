package plycrag.lists;

import java.util.List;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.StructureLine;
import plycrag.document.Cell;
import plycrag.document.Table;

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
  private static final double FIGURES = 100;
  private static final int MOST_DECIMALS = 6;

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

  /** Three significant figures. */
  private static Cell number(double value) {
    double size = Math.abs(value);
    int places = 0;
    while (size > 0 && size < FIGURES && places < MOST_DECIMALS) {
      size *= 10;
      places++;
    }
    return Cell.number(value, places);
  }
}
