package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew;
import plycrag.catalog.SoldScrew.Use;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Screw;
import plycrag.units.LengthUnit;
import plycrag.wall.Screws;
import plycrag.wall.Wall;
import plycrag.wall.buying.MaterialWishes.Environment;

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
          "pilot_hole_mm",
          "penetration_mm",
          "clearance_bit",
          "pilot_bit",
          "gauge",
          "head",
          "drive",
          "coating");

  private FastenerList() {}

  /** A row a screw, line by line. */
  public static Table of(CheckedLayout checked, Environment environment) {
    Layout layout = checked.layout();
    Screws screws = layout.wall().screws();
    List<Cell> kind = kind(layout.wall(), environment);
    ScrewDrilling holes = ScrewDrilling.of(screws);
    List<List<Cell>> rows = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      for (Screw screw : facet.screws()) {
        List<Cell> row = new ArrayList<>();
        row.addAll(
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
        row.addAll(kind);
        rows.add(row);
      }
    }
    return new Table("Fasteners", COLUMNS, rows);
  }

  /** What is the same of all screws: what to drill and what to ask for. */
  private static List<Cell> kind(Wall wall, Environment environment) {
    Screws screws = wall.screws();
    ScrewDrilling holes = ScrewDrilling.of(screws);
    boolean inches = wall.tape().unit() == LengthUnit.IN;
    Optional<SoldScrew> sold = ScrewCatalog.find(Use.SHEET, screws.diameter(), screws.length());
    return List.of(
        Cell.mm(screws.length() - wall.sheet().thickness()),
        Cell.of(DrillBit.atLeast(holes.clearance(), wall.tape())),
        Cell.of(DrillBit.atMost(holes.pilot(), wall.tape())),
        Cell.of(inches ? Gauge.name(screws.diameter()).orElse("") : ""),
        Cell.of(sold.map(SoldScrew::head).orElse("")),
        Cell.of(sold.map(SoldScrew::drive).orElse("")),
        Cell.of(Coating.words(environment)));
  }
}
