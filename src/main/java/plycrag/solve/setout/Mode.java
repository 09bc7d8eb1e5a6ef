package plycrag.solve.setout;

/** What may be done about a line that is blocked. */
public enum Mode {
  /** Nothing: every line stays where it is asked for, and what blocks it is told. */
  REPORT,
  /** All lines move by one amount; those still blocked are dropped. */
  SHIFT,
  /** Each line may move within the tolerance; the members stay. */
  NUDGE,
  /** Nothing moves; lines that are blocked are dropped. */
  DROP,
  /** Lines move within the tolerance and bays' members within their greatest spacing. */
  SOLVE
}
