package plycrag.proof.replay;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * The machine with a sheet on it, X and Y in mm from the programs' zero.
 *
 * @param heights of the sheet
 * @param travel where the tool's centre may go
 * @param keepOuts what the tool must go around, or over at the safe height
 * @param dwell least wait for the spindle, seconds
 * @param zero what a program must say of its zero in its first lines, in capitals
 * @param stop where it stops for another tool
 */
public record Bench(
    Heights heights,
    Envelope travel,
    List<Envelope> keepOuts,
    double dwell,
    String zero,
    Stop stop) {
  /**
   * Where a program stops for another tool.
   *
   * @param height Z at least, mm
   * @param place X and Y; empty where the tool may be anywhere
   */
  public record Stop(double height, Optional<Coordinate> place) {}

  /** Copies the box and the list. */
  public Bench {
    travel = travel.copy();
    keepOuts = keepOuts.stream().map(Envelope::copy).toList();
  }

  /** A machine whose tools are changed at the safe height, anywhere. */
  public Bench(
      Heights heights, Envelope travel, List<Envelope> keepOuts, double dwell, String zero) {
    this(
        heights,
        travel,
        keepOuts,
        dwell,
        zero,
        new Stop(heights.travel().safe(), Optional.empty()));
  }
}
