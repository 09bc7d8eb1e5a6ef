package plycrag.solve.support;

/**
 * A facet whose upper edge a support does not hold, and what it falls short of.
 *
 * @param facet its name
 * @param cause why
 * @param found degrees from vertical where it leans too much or too little, else mm
 * @param required the most or the least that would do, the same
 */
public record Unheld(String facet, Cause cause, double found, double required) {
  /** What a support of a kind can fail for. */
  public enum Cause {
    /** It leans, and so does not lie flat on a wall behind it. */
    NOT_FLAT,
    /** Nothing level ends on what leans out, or back, further. */
    TOO_STEEP,
    /** No hanger ends on what leans out less. */
    TOO_UPRIGHT,
    /** Its upper edge is too low above the floor for what is to hold it; heights of the edge. */
    TOO_LOW,
    /** Its upper edge leaves no hanger under the ceiling; lengths of the hanger. */
    CEILING,
    /** The brace from the post's foot meets the frame; how far the posts stand behind. */
    BRACE,
    /** No brace from a post's foot passes behind the frame, however far the posts stand behind. */
    NO_BRACE,
    /** Between post and frame is no room for the heel; how far the posts stand behind. */
    HEEL,
    /** Between post and frame is no room for a knee brace; how far the posts stand behind. */
    KNEE,
    /** The knee brace that is asked for is too short for its ends; its reach. */
    SHORT_KNEE,
    /** The panel is too low for a knee brace; heights inside it. */
    LOW_PANEL
  }
}
