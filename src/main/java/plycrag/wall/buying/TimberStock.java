package plycrag.wall.buying;

import java.util.List;
import plycrag.geometry.Tolerance;

/**
 * The timber that the merchant sells, and what is at hand.
 *
 * @param lengths ascending, mm; the first at least can be carried home
 * @param kerf the width a saw cut removes, mm
 * @param endTrim what is cut off each end of every stick, mm
 * @param carryLength the longest that can be carried home, mm
 * @param atHand sticks of the frame's section that need not be bought, in no order, mm
 */
public record TimberStock(
    List<Double> lengths, double kerf, double endTrim, double carryLength, List<Double> atHand) {
  /** Copies the lengths. */
  public TimberStock {
    lengths = List.copyOf(lengths);
    atHand = List.copyOf(atHand);
  }

  /** The lengths that can be bought and carried home, ascending, mm. */
  public List<Double> carried() {
    return lengths.stream().filter(length -> Tolerance.atMost(length, carryLength)).toList();
  }

  /** The longest member that a bought stick yields between its trimmed ends, mm. */
  public double longestMember() {
    List<Double> carried = carried();
    return carried.get(carried.size() - 1) - 2 * endTrim;
  }

  /** As it is for timber of which there is none at hand. */
  public TimberStock withNothingAtHand() {
    return new TimberStock(lengths, kerf, endTrim, carryLength, List.of());
  }
}
