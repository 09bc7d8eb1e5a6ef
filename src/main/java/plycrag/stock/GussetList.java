package plycrag.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.joints.Gusset;
import plycrag.layout.sheets.LaidGusset;
import plycrag.solve.fixing.FacePlace;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.GussetScrew;
import plycrag.units.Decimal;

/** The gussets of a frame with their screws. */
public final class GussetList {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "joints",
          "members",
          "side",
          "along",
          "length_mm",
          "width_mm",
          "thickness_mm",
          "sheet",
          "diameter_mm",
          "screw_length_mm",
          "clearance_hole_mm",
          "pilot_hole_mm",
          "screw_member",
          "screw_along_mm",
          "screw_across_mm");

  private GussetList() {}

  /**
   * A row a gusset. Screws are read from its lower left corner as one looks at it; its sides run
   * along and across the member named; the sheet is the one whose offcut yields it, or none.
   */
  public static Table of(CheckedLayout checked) {
    double thickness = checked.layout().wall().sheet().thickness();
    List<List<Cell>> rows = new ArrayList<>();
    for (LaidGusset laid : checked.layout().offcuts().gussets()) {
      rows.add(row(laid, thickness));
    }
    return new Table("Gussets", COLUMNS, rows);
  }

  private static List<Cell> row(LaidGusset laid, double thickness) {
    Gusset gusset = laid.gusset();
    GussetFit fit = gusset.fit();
    ScrewDrilling holes = ScrewDrilling.forGusset(fit.diameter());
    return List.of(
        Cell.of(gusset.mark()),
        Cell.of(String.join(" ", gusset.joints())),
        Cell.of(String.join(" ", gusset.members())),
        Cell.of(gusset.side().words()),
        Cell.of(fit.parallelTo()),
        Cell.mm(fit.size().along()),
        Cell.mm(fit.size().across()),
        Cell.mm(thickness),
        Cell.of(laid.part().sheet().orElse("")),
        Cell.mm(fit.diameter()),
        Cell.mm(fit.screwLength()),
        Cell.mm(holes.clearance()),
        Cell.mm(holes.pilot()),
        Cell.of(fit.screws().stream().map(GussetScrew::member).collect(Collectors.joining(" "))),
        places(fit, FacePlace::along),
        places(fit, FacePlace::across));
  }

  private static Cell places(GussetFit fit, ToDoubleFunction<FacePlace> measure) {
    return Cell.of(
        fit.screws().stream()
            .map(screw -> Decimal.of(measure.applyAsDouble(screw.spot()), 4))
            .collect(Collectors.joining(" ")));
  }

  /**
   * How many screws of each size all gussets take.
   *
   * @param gussets of a frame
   */
  static Map<SteelCounts.Screw, Integer> screws(List<Gusset> gussets) {
    Map<SteelCounts.Screw, Integer> screws = new LinkedHashMap<>();
    for (Gusset gusset : gussets) {
      GussetFit fit = gusset.fit();
      SteelCounts.Screw screw = new SteelCounts.Screw(fit.diameter(), fit.screwLength());
      screws.merge(screw, fit.screws().size(), Integer::sum);
    }
    return screws;
  }
}
