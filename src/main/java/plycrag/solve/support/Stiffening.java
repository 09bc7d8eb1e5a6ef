package plycrag.solve.support;

/**
 * What keeps posts from swaying.
 *
 * @param along along the wall
 * @param kneesAcross whether short timber under the ties, and not braces from their feet, keeps
 *     them square to the wall
 * @param knee how far a knee brace reaches from its corner at most, mm
 */
public record Stiffening(Along along, boolean kneesAcross, double knee) {
  /** What goes across the posts. */
  public enum Along {
    /** Slanting timber over a whole bay. */
    BRACES,
    /** A beam, and short slanting timber under it in every bay. */
    KNEES,
    /** Nothing. */
    NOTHING
  }
}
