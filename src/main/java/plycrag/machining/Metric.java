package plycrag.machining;

/** How long the way is between two places. */
@FunctionalInterface
interface Metric {
  /** The straight way a machine drives. */
  Metric STRAIGHT = (dx, dy) -> Math.sqrt(dx * dx + dy * dy);

  /** The length of a way so far to the right and up, never negative, the same there and back. */
  double length(double dx, double dy);
}
