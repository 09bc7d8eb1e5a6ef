package plycrag.finding;

import java.util.Objects;
import java.util.Optional;

/**
 * One thing that is wrong or worth knowing.
 *
 * @param rule the name of the rule, in lower case with hyphens; for parameters the key
 * @param severity how much it weighs
 * @param place where it is
 * @param first the mark of the thing judged, empty if there is none
 * @param second the mark of what stands in its way, empty if there is none
 * @param measure what was found and required, where the rule measures
 * @param sentence what is wrong, for a person
 * @param suggestion what would mend it, empty if nothing simple would
 */
public record Finding(
    String rule,
    Severity severity,
    Place place,
    String first,
    String second,
    Optional<Measure> measure,
    String sentence,
    String suggestion) {

  /** Rejects missing parts. */
  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(place);
    Objects.requireNonNull(measure);
    if (rule.isBlank() || sentence.isBlank()) {
      throw new IllegalArgumentException("a finding needs a rule and a sentence");
    }
  }

  /**
   * A finding in a file that a user wrote; {@code sentence} holds what is wrong, what was probably
   * meant and what is allowed.
   */
  public static Finding inFile(String key, Place.InFile place, String sentence) {
    return new Finding(key, Severity.ERROR, place, "", "", Optional.empty(), sentence, "");
  }

  /** Whether it forbids making the wall. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }
}
