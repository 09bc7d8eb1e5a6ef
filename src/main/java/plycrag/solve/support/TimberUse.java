package plycrag.solve.support;

/** What a timber of a support is for. */
public enum TimberUse {
  /** Stands upright. */
  POST,
  /** Runs level from the frame to what holds it. */
  TIE,
  /** Lies on the floor under the frame and the post. */
  RAIL,
  /** Stands on a rail behind a stud and along it, cut level at its foot. */
  HEEL,
  /** Runs level along the feet of posts. */
  SILL,
  /** Slants. */
  BRACE,
  /** Slants over a corner. */
  KNEE,
  /** Runs level along the upper ends of posts. */
  BEAM,
  /** Lies flat along a wall or a ceiling. */
  LEDGER,
  /** Comes straight down from a ceiling. */
  HANGER
}
