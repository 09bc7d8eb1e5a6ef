package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * What is cut out of a sheet: a piece, or what an offcut yields.
 *
 * @param mark of it
 * @param area where it lies on the sheet; its openings are open
 */
public record CutOut(String mark, Polygon area) {
  /** All of a sheet's, pieces first. */
  public static List<CutOut> of(LaidSheet sheet, OffcutParts offcuts) {
    List<CutOut> all = new ArrayList<>();
    sheet.pieces().forEach(laid -> all.add(new CutOut(laid.piece().mark(), laid.kept())));
    offcuts.of(sheet).forEach(part -> all.add(new CutOut(part.mark(), part.area())));
    return all;
  }
}
