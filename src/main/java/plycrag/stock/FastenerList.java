package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Screw;
import plycrag.params.ScrewParameters;

/** Every screw through a sheet. */
public final class FastenerList {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "facet",
          "piece",
          "member",
          "kind",
          "u_mm",
          "v_mm",
          "diameter_mm",
          "length_mm",
          "clearance_hole_mm",
          "pilot_hole_mm");

  private FastenerList() {}

  /** A row a screw, line by line. */
  public static Table of(CheckedLayout checked) {
    Layout layout = checked.layout();
    ScrewParameters screws = layout.wall().screws();
    ScrewHoles holes = ScrewHoles.of(screws);
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Screw screw : facet.screws()) {
        rows.add(
            List.of(
                Cell.of(screw.mark()),
                Cell.of(facet.facet().name()),
                Cell.of(screw.piece()),
                Cell.of(screw.member()),
                Cell.of("screw"),
                Cell.mm(screw.centre().getX()),
                Cell.mm(screw.centre().getY()),
                Cell.mm(screws.diameter()),
                Cell.mm(screws.length()),
                Cell.mm(holes.clearance()),
                Cell.mm(holes.pilot())));
      }
    }
    return new Table("Fasteners", COLUMNS, rows);
  }
}
