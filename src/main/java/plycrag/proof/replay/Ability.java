package plycrag.proof.replay;

/** What some controllers understand beyond the plainest. */
public enum Ability {
  /** Comments in parentheses. */
  PARENTHESES,
  /** Comments after a semicolon, to the end of the line. */
  SEMICOLON,
  /** Line numbers. */
  LINE_NUMBERS,
  /** A percent sign alone on the first line and on the last. */
  PERCENT,
  /** A number of the program itself, on a line of its own before all words. */
  NUMBERED_PROGRAMS,
  /** Words that cancel what another program left in force. */
  CANCELLING,
  /** More places of zero than the first. */
  OFFSETS,
  /** A word by which centres of arcs count from zero. */
  CENTRES_FROM_ZERO,
  /** A word by which centres of arcs count from the arc's beginning. */
  CENTRES_FROM_START,
  /** A switch beside the spindle. */
  MIST,
  /** Another switch beside the spindle. */
  FLOOD,
  /** Lengths in inches. */
  INCHES,
  /** Places and heights as steps from the one before. */
  INCREMENTS,
  /** Arcs and helices. */
  ARCS,
  /** Cycles that drill a hole in one line. */
  CYCLES,
  /** A word that changes the tool. */
  TOOL_CHANGE,
  /** A word that counts with the length of the tool. */
  LENGTH_OFFSETS,
  /** A pause, for a change of tool by hand. */
  PAUSE
}
