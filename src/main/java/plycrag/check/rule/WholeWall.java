package plycrag.check.rule;

import java.util.Optional;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Place;
import plycrag.finding.Severity;

/** Writes the findings of one rule that are the same all over the wall. */
public final class WholeWall {
  private final String rule;
  private final Severity severity;

  /**
   * Writes the findings of one rule.
   *
   * @param rule the rule's name
   * @param severity how much they weigh
   */
  public WholeWall(String rule, Severity severity) {
    this.rule = rule;
    this.severity = severity;
  }

  /** Something that is not so many millimetres short. */
  public Finding finding(String sentence, String suggestion) {
    return new Finding(
        rule, severity, new Place.WholeWall(), "", "", Optional.empty(), sentence, suggestion);
  }

  /** Something that falls short. */
  public Finding finding(
      String first, String second, Measure measure, String sentence, String suggestion) {
    return new Finding(
        rule,
        severity,
        new Place.WholeWall(),
        first,
        second,
        Optional.of(measure),
        sentence,
        suggestion);
  }
}
