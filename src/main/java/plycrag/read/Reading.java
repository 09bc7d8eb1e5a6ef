package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.finding.Finding;

/**
 * What came of reading a file.
 *
 * @param <T> what a sound file says
 * @param value present if there are no findings
 * @param findings all that is wrong, by line and column
 */
public record Reading<T>(Optional<T> value, List<Finding> findings) {
  /** Copies the findings. */
  public Reading {
    findings = List.copyOf(findings);
    if (value.isPresent() != findings.isEmpty()) {
      throw new IllegalArgumentException("either a value or findings");
    }
  }

  /** What stands for a file that was not needed. */
  public static <T> Reading<T> of(T value) {
    return new Reading<>(Optional.of(value), List.of());
  }
}
