package plycrag.layout;

import plycrag.finding.Measure;

/**
 * Something too near to an insert.
 *
 * @param kind what part of the insert it stands in the way of, or what it is
 * @param mark the thing's mark
 * @param measure what was found and required
 */
public record Obstacle(Kind kind, String mark, Measure measure) {

  /** What meets what. */
  public enum Kind {
    /** The flange and timber. */
    FLANGE_AND_TIMBER,
    /** The bolt zone and timber. */
    BOLT_AND_TIMBER,
    /** The flange and the edge of its piece. */
    FLANGE_AND_EDGE,
    /** The hole lies in no piece, or across an edge. */
    OUTSIDE,
    /** The flange and a screw. */
    FLANGE_AND_SCREW,
    /** Two flanges. */
    TWO_FLANGES,
    /** The centre and the facet's outline. */
    CENTRE_AND_OUTLINE
  }
}
