package plycrag.document;

/** How a line runs. */
public enum Dash {
  /** Visible edges. */
  SOLID,
  /** What lies behind. */
  DASHED,
  /** Limits that are no edges, such as a setback. */
  DOTTED,
  /** Centre lines. */
  CHAIN
}
