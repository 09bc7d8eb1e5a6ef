package plycrag.params;

import java.util.List;
import java.util.Optional;
import plycrag.finding.Finding;

/**
 * What came of reading a list of positions.
 *
 * @param positions present if there are no findings
 * @param findings all that is wrong, by line and column
 */
public record PositionReading(Optional<List<Position>> positions, List<Finding> findings) {
  /** Copies the lists. */
  public PositionReading {
    positions = positions.map(List::copyOf);
    findings = List.copyOf(findings);
    if (positions.isPresent() != findings.isEmpty()) {
      throw new IllegalArgumentException("either positions or findings");
    }
  }

  /** What stands for a list where the parameter file names none. */
  public static PositionReading none() {
    return new PositionReading(Optional.of(List.of()), List.of());
  }
}
