package plycrag.geometry;

/**
 * What counts as nothing: the only place for it. Each quantity has one meaning; whoever compares
 * says by its name what the difference would come from.
 *
 * <p>A length that timber, a tool or a trade asks for, such as the least length of a block, is no
 * tolerance: it stays with the rule that asks for it.
 */
public final class Tolerance {
  /**
   * What is left of nothing by doubles that are exact but for their last digits, in the unit of
   * what is reckoned: below it nobody divides. For lines that are parallel, edges without length,
   * places on one line.
   */
  public static final double VANISHING = 1e-9;

  /**
   * What sums and quotients of lengths may be out by, mm or parts of one: doubles hold a hundred
   * metres to 1.5e-11 mm, thousands of steps added up come to 1e-8, and what differs by a nanometre
   * nobody tells apart. For whatever compares lengths as they are given, or counts how many steps
   * they are: members, sheets, sticks, passes of tools and nearly every rule.
   */
  public static final double RECKONING = 1e-6;

  /**
   * The step of the grid on which every coordinate lies, mm. For those that look for a place on it,
   * and for one place held against a line.
   */
  public static final double GRID = 0.001;

  /**
   * How far two places on the grid may be from where they were meant to be to each other, mm: half
   * a step aslant for each is 1.41 µm, and a sixteenth of an inch does not lie on the grid. For
   * distances between places, and corners on a line between others.
   */
  public static final double OFF_GRID = 2 * GRID;

  /**
   * What lies nearer touches, and what reaches less far into another does not, mm: places that
   * slant, turn and are cut several times on the grid are out by a few of its steps, and nobody
   * sees or makes a hundredth. For footprints, bodies in the room, edges on edges and lines drawn
   * over each other.
   */
  public static final double TOUCH = 0.01;

  /**
   * What timber can be marked and cut to at best, mm: a stretch or an overlap that is less is none.
   * For bare stretches of edges, corners left by a cutter and gussets beside each other.
   */
  public static final double MARKED = 0.1;

  /**
   * The sine of the angle below which two ways are one: that by which a step of the grid turns a
   * line a tenth of a metre long. For edges and members of a facet, and ways seen end on.
   */
  public static final double PARALLEL = 1e-5;

  /**
   * The same for lengths of timber and edges as short as one is broad: 0.06°, which neither a saw
   * nor timber is true to, and fifty times what the grid turns them by.
   */
  public static final double ALONG_TIMBER = 1e-3;

  /** An angle of a cut below this is square, degrees: lists round it to 0.0. For saw cuts. */
  public static final double SQUARE = 0.005;

  private Tolerance() {}

  /** Whether two lengths are the same but for how they were reckoned. */
  public static boolean same(double one, double other) {
    return Math.abs(one - other) < RECKONING;
  }

  /** Whether a length is not above a limit, that itself allowed. */
  public static boolean atMost(double length, double limit) {
    return length <= limit + RECKONING;
  }

  /** Whether a length is not below a limit, that itself allowed. */
  public static boolean atLeast(double length, double limit) {
    return length >= limit - RECKONING;
  }

  /** Whether a length is above a limit. */
  public static boolean isMore(double length, double limit) {
    return length > limit + RECKONING;
  }

  /** Whether a length is below a limit. */
  public static boolean isLess(double length, double limit) {
    return length < limit - RECKONING;
  }

  /** Whether there is any of a length. */
  public static boolean isSome(double length) {
    return length > RECKONING;
  }

  /** The least whole number of steps that is not below a quotient; one just above a whole is it. */
  public static double wholeUp(double steps) {
    return Math.ceil(steps - RECKONING);
  }

  /** The greatest whole number of steps that a quotient holds; one just below a whole is it. */
  public static double wholeDown(double steps) {
    return Math.floor(steps + RECKONING);
  }
}
