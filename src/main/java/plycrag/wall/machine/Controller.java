package plycrag.wall.machine;

import plycrag.units.LengthUnit;

/**
 * What the router's controller understands; each word says what the programs then do.
 *
 * @param cycles how a hole is spelled
 * @param toolChange what happens where another tool is needed
 * @param changePlace where that happens
 * @param arcs whether it follows arcs; otherwise they become short straight moves
 * @param dwellUnit what the number of a wait counts
 * @param text the look of the lines
 * @param unit of all lengths
 * @param decimals most digits after the point
 * @param frame what is said around the moves
 */
public record Controller(
    Cycles cycles,
    ToolChange toolChange,
    ChangePlace changePlace,
    boolean arcs,
    DwellUnit dwellUnit,
    Text text,
    LengthUnit unit,
    int decimals,
    ProgramFrame frame) {

  /** How a hole is spelled. */
  public enum Cycles {
    /** Move by move. */
    MOVES,
    /** As one word that the controller takes apart. */
    CANNED
  }

  /** What happens where another tool is needed. */
  public enum ToolChange {
    /** Every tool has a program of its own. */
    PROGRAM,
    /** The program waits for a person. */
    PAUSE,
    /** The machine is told the tool's number. */
    WORD
  }

  /** What the number of a wait counts. */
  public enum DwellUnit {
    /** Seconds. */
    SECONDS,
    /** Thousandths of a second. */
    MILLISECONDS
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

  /**
   * The look of the lines.
   *
   * @param comments how remarks are written
   * @param lineNumbers whether lines are numbered
   * @param lineLength most characters of a line, its end not counted
   */
  public record Text(Comments comments, boolean lineNumbers, int lineLength) {}
}
