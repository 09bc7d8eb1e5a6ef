package plycrag.params;

import java.util.List;
import java.util.Optional;
import plycrag.finding.Finding;

/**
 * What came of reading a parameter file.
 *
 * @param parameters present if there are no findings
 * @param findings all that is wrong, by line and column
 */
public record Reading(Optional<Parameters> parameters, List<Finding> findings) {
  /** Copies the findings. */
  public Reading {
    findings = List.copyOf(findings);
    if (parameters.isPresent() != findings.isEmpty()) {
      throw new IllegalArgumentException("either parameters or findings");
    }
  }
}
