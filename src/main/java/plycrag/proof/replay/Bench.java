package plycrag.proof.replay;

import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * The machine with a sheet on it, X and Y in mm from the programs' zero.
 *
 * @param heights of the sheet
 * @param travel where the tool's centre may go
 * @param keepOuts what the tool must go around, or over at the safe height
 * @param dwell least wait for the spindle, seconds
 * @param zero what a program must say of its zero in its first lines, in capitals
 */
public record Bench(
    Heights heights, Envelope travel, List<Envelope> keepOuts, double dwell, String zero) {
  /** Copies the box and the list. */
  public Bench {
    travel = travel.copy();
    keepOuts = keepOuts.stream().map(Envelope::copy).toList();
  }
}
