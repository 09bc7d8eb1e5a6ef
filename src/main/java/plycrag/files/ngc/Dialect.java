package plycrag.files.ngc;

import plycrag.units.LengthUnit;

/**
 * How a controller wants programs spelled.
 *
 * @param words what its words mean
 * @param look how its lines look
 * @param unit of all lengths
 * @param decimals most digits after the point, 3 or 4
 */
public record Dialect(Words words, Look look, LengthUnit unit, int decimals) {
  /**
   * What its words mean.
   *
   * @param cannedCycles whether a hole is one word rather than its moves
   * @param changesTools whether it knows a word for another tool; otherwise the program waits there
   * @param lengthOffsets whether it is told to count with the length of a tool that was changed
   * @param millisecondDwells whether waits count thousandths of a second
   */
  public record Words(
      boolean cannedCycles,
      boolean changesTools,
      boolean lengthOffsets,
      boolean millisecondDwells) {}

  /**
   * How its lines look.
   *
   * @param comments how remarks are written
   * @param numbered whether lines are numbered
   * @param longest most characters of a line, 70 at least
   */
  public record Look(Comments comments, boolean numbered, int longest) {
    /** Rejects lines that could not hold a move. */
    public Look {
      if (longest < 70) {
        throw new IllegalArgumentException("lines of " + longest + " characters hold no move");
      }
    }
  }

  /** How remarks are written. */
  public enum Comments {
    /** Between parentheses. */
    PARENTHESES,
    /** After a semicolon. */
    SEMICOLON,
    /** Not at all. */
    NONE
  }
}
