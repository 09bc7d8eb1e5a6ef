package plycrag.wall.machine;

import java.util.Optional;

/**
 * The holes that a machine drills for the screws that hold the sheets.
 *
 * @param diameter of the clearance holes, mm
 * @param sink how their heads are let in; empty if by hand
 */
public record ClearanceHoles(double diameter, Optional<Sink> sink) {
  /**
   * How a head is let in until it is flush.
   *
   * @param head its diameter, mm
   * @param deepest what the tool may go below the sheet's face, mm
   */
  public record Sink(double head, double deepest) {}
}
