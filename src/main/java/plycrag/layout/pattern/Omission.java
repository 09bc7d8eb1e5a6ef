package plycrag.layout.pattern;

import plycrag.finding.Measure;

/**
 * An insert that was asked for and left out.
 *
 * @param insert what was asked for
 * @param mark of the worst thing in its way
 * @param measure what was found between them and required
 * @param reason in words, to follow "is left out: "
 */
public record Omission(Insert insert, String mark, Measure measure, String reason) {

  /** For something around it. */
  static Omission of(Insert insert, Obstacle obstacle) {
    return new Omission(
        insert, obstacle.mark(), obstacle.measure(), obstacle.hindrance().reason(obstacle));
  }

  /** For another insert, which stays. */
  static Omission of(Insert insert, Insert other, Measure measure) {
    return new Omission(
        insert, other.mark(), measure, "its flange would be too near to that of " + other.mark());
  }
}
