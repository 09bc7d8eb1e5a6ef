package plycrag.wall;

import java.util.Optional;
import plycrag.wall.buying.Section;

/**
 * The framing behind the sheets.
 *
 * @param breadth the side of the section that lies against the sheet, mm
 * @param depth the other side, mm
 * @param studSpacing greatest, centre to centre, mm
 * @param seams what backs a seam
 * @param edgeStuds how many studs stand at each side
 * @param longStuds what becomes of studs longer than is sold
 * @param blockingSpacing greatest between rows of blocking, middle to middle, mm; empty where only
 *     seams get any
 */
public record Frame(
    double breadth,
    double depth,
    double studSpacing,
    SeamBacking seams,
    EdgeStuds edgeStuds,
    LongStuds longStuds,
    Optional<Double> blockingSpacing) {

  /** Of its timber. */
  public Section section() {
    return new Section(breadth, depth);
  }

  /** How many studs stand at each side of a facet. */
  public enum EdgeStuds {
    /** One, flush with the side. */
    SINGLE,
    /** A second one beside it. */
    DOUBLED
  }

  /** What becomes of studs longer than is sold. */
  public enum LongStuds {
    /** They are refused. */
    REFUSED,
    /** They are made of lengths end to end. */
    SPLICED
  }

  /** What backs a seam. */
  public enum SeamBacking {
    /** Two members on edge, side by side, one for each piece. */
    DOUBLED,
    /** One member laid flat, its greater side against both pieces. */
    FLAT,
    /** One member on edge for both pieces. */
    SHARED
  }
}
