package plycrag.solve.nest;

import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * How a sheet comes apart into rectangles; blanks that are none are cut from these afterwards.
 *
 * @param cuts in an order in which each runs right across what is then one part
 * @param offcuts what is left over, in the order in which the cuts free it, mm on the sheet
 */
public record SheetCutting(List<SawCut> cuts, List<Envelope> offcuts) {
  /** Keeps copies. */
  public SheetCutting {
    cuts = List.copyOf(cuts);
    offcuts = offcuts.stream().map(Envelope::new).toList();
  }

  /**
   * A straight cut.
   *
   * @param upright along y, or else along x
   * @param at where its kerf begins along the other axis, mm; just outside the sheet where an edge
   *     is trimmed by less than a kerf
   * @param from where the cut begins along its own axis, mm
   * @param to where it ends, mm
   */
  public record SawCut(boolean upright, double at, double from, double to) {
    /** Mm. */
    public double length() {
      return to - from;
    }
  }

  /** The same on a sheet whose axes have changed places. */
  SheetCutting transposed() {
    return new SheetCutting(
        cuts.stream()
            .map(cut -> new SawCut(!cut.upright(), cut.at(), cut.from(), cut.to()))
            .toList(),
        offcuts.stream().map(SheetCutting::transposed).toList());
  }

  private static Envelope transposed(Envelope box) {
    return new Envelope(box.getMinY(), box.getMaxY(), box.getMinX(), box.getMaxX());
  }
}
