package plycrag.layout.nest;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** Lays blanks on sheets. */
public final class Nesting {
  private Nesting() {}

  /**
   * One blank a sheet, in the order of the blanks.
   *
   * @param width of a sheet along u, mm
   * @param height of a sheet along v, mm
   * @param first the number of the first sheet
   */
  public static List<StockSheet> onePerSheet(
      List<Blank> blanks, double width, double height, int first) {
    List<StockSheet> sheets = new ArrayList<>();
    for (Blank blank : blanks) {
      Envelope box = blank.outline().getEnvelopeInternal();
      Placement placement = new Placement(box.getMinX(), box.getMinY());
      String mark = "S" + (first + sheets.size());
      sheets.add(new StockSheet(mark, blank.mark(), width, height, placement));
    }
    return sheets;
  }
}
