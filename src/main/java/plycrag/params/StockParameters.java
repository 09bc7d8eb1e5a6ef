package plycrag.params;

import java.util.List;

/**
 * The timber that the merchant sells.
 *
 * @param lengths ascending, mm
 * @param kerf the width a saw cut removes, mm
 */
public record StockParameters(List<Double> lengths, double kerf) {
  /** Copies the lengths. */
  public StockParameters {
    lengths = List.copyOf(lengths);
  }

  /** The longest length sold, mm. */
  public double longest() {
    return lengths.get(lengths.size() - 1);
  }
}
