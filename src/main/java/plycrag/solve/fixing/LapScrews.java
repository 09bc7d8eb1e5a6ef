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
 * @param lines where they go through both, each at the spot of the same number
 */
public record LapScrews(
    List<FacePlace> spots, boolean holds, Asked asked, double thickest, List<ThroughLine> lines) {

  /** Copies the places. */
  public LapScrews {
    spots = List.copyOf(spots);
    lines = List.copyOf(lines);
  }

  /**
   * What screws of a diameter ask for where two members lie beside each other, mm.
   *
   * @param first to the sides and ends of the first member
   * @param second to those of the second
   * @param apart between two screws along the grain of the first
   */
  public record Asked(FromEdges first, FromEdges second, double apart) {

    /**
     * What screws of a diameter ask for round them in one member, mm.
     *
     * @param side to its sides
     * @param end to its ends
     */
    public record FromEdges(double side, double end) {}

    /** How far two parallel members must overlap along the grain for two screws, mm. */
    public double overlap() {
      return Math.max(first.end(), second.end()) * 2 + apart;
    }

    /** How broad the face must be that they share, mm. */
    public double breadth() {
      return 2 * Math.max(first.side(), second.side());
    }
  }
}
