package plycrag.document;

import java.util.List;

/** How a line runs. */
public enum Dash {
  /** Visible edges. */
  SOLID,
  /** What lies behind. */
  DASHED,
  /** Limits that are no edges, such as a setback. */
  DOTTED,
  /** Centre lines. */
  CHAIN;

  /** Lengths drawn and left out by turns, mm on paper; none for a solid line. */
  public List<Double> pattern() {
    return switch (this) {
      case SOLID -> List.of();
      case DASHED -> List.of(3.0, 1.5);
      case DOTTED -> List.of(0.3, 1.1);
      case CHAIN -> List.of(6.0, 1.2, 0.8, 1.2);
    };
  }
}
