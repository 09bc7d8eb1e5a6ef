package plycrag.params;

import java.util.List;
import java.util.Optional;
import plycrag.finding.Finding;

/**
 * What came of reading a price list.
 *
 * @param prices present if there are no findings
 * @param findings all that is wrong, by line and column
 */
public record PriceReading(Optional<PriceList> prices, List<Finding> findings) {
  /** Copies the findings. */
  public PriceReading {
    findings = List.copyOf(findings);
    if (prices.isPresent() != findings.isEmpty()) {
      throw new IllegalArgumentException("either prices or findings");
    }
  }

  /** Prices that were not read from a file. */
  public PriceReading(PriceList prices) {
    this(Optional.of(prices), List.of());
  }
}
