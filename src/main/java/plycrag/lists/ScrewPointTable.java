package plycrag.lists;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.screws.ScrewPoint;

/** Where holds may be screwed on, and what is behind. */
public final class ScrewPointTable {
  private static final List<String> COLUMNS =
      List.of("mark", "facet", "piece", "u_mm", "v_mm", "behind");

  private ScrewPointTable() {}

  /** A row a point, facet by facet; {@code behind} is empty where there is the sheet alone. */
  public static Table of(CheckedLayout checked) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      facet.screwPoints().forEach(point -> rows.add(row(facet.facet().name(), point)));
    }
    return new Table("Screw points", COLUMNS, rows);
  }

  private static List<Cell> row(String facet, ScrewPoint point) {
    return List.of(
        Cell.of(point.mark()),
        Cell.of(facet),
        Cell.of(point.piece()),
        Cell.mm(point.centre().getX()),
        Cell.mm(point.centre().getY()),
        Cell.of(point.member().orElse("")));
  }
}
