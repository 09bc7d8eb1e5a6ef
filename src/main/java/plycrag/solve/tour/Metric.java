package plycrag.solve.tour;

/** How long the way is between two places. */
@FunctionalInterface
public interface Metric {
  /** The straight way a machine drives. */
  Metric STRAIGHT =
      (fromX, fromY, toX, toY) -> {
        double dx = toX - fromX;
        double dy = toY - fromY;
        return Math.sqrt(dx * dx + dy * dy);
      };

  /** The length of a way between two places, never negative, the same there and back. */
  double length(double fromX, double fromY, double toX, double toY);
}
