package plycrag.layout.pattern;

import plycrag.finding.Measure;

/**
 * Something too near to an insert.
 *
 * @param hindrance what kind of thing it is
 * @param part what of the insert it stands in the way of
 * @param thing which it is
 * @param measure what was found and required
 */
public record Obstacle(Hindrance hindrance, InsertPart part, MarkedThing thing, Measure measure) {

  /** The thing's mark. */
  public String mark() {
    return thing.mark();
  }
}
