package plycrag.solve.fixing;

import java.util.List;

/**
 * The screws through one member into another beside it.
 *
 * @param spots in order: along the first member from its lower or left end, and across it from its
 *     side against the sheets or, without sheets, from its lower or left side, mm
 * @param holds whether all distances hold
 * @param asked what must remain
 * @param thickest the greatest diameter of which they would hold, mm; 0 if that is none
 */
public record LapScrews(List<FacePlace> spots, boolean holds, Asked asked, double thickest) {

  /** Copies the places. */
  public LapScrews {
    spots = List.copyOf(spots);
  }

  /**
   * What screws of a diameter ask for where two members lie beside each other, mm.
   *
   * @param side to the sides of the first member
   * @param end to its ends
   * @param otherSide to the sides of the second
   * @param otherEnd to its ends
   * @param apart between two screws along the grain of the first
   */
  public record Asked(double side, double end, double otherSide, double otherEnd, double apart) {

    /** How far two parallel members must overlap along the grain for two screws, mm. */
    public double overlap() {
      return Math.max(end, otherEnd) * 2 + apart;
    }

    /** How broad the face must be that they share, mm. */
    public double breadth() {
      return 2 * Math.max(side, otherSide);
    }
  }
}
