package plycrag.check.standing;

import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.wall.room.Room.Way;

/**
 * An opening on the way in, as wide on its far side as there is room.
 *
 * @param width mm
 * @param height mm
 * @param turn the width of what things are turned out of into it, mm; empty: they come straight
 */
record Opening(double width, double height, Optional<Double> turn) {
  /** Turns of a search of which each leaves two thirds. */
  private static final int TURNS = 100;

  /** That of a way whose width and height are told. */
  static Optional<Opening> of(Way way) {
    return way.width()
        .flatMap(width -> way.height().map(height -> new Opening(width, height, way.turn())));
  }

  /**
   * How long a bar of a thickness is at most that is carried level round the corner: at an angle
   * with the tangent {@code s/c} it touches both outer walls and the inner corner when it is {@code
   * (a s + b c - t) / (s c)} long, and the least of these decides (the ladder round the corner,
   * with a thickness). Without limit where there is no corner.
   */
  double longest(double thickness) {
    return turn.map(passage -> aroundCorner(passage, thickness)).orElse(Double.POSITIVE_INFINITY);
  }

  private double aroundCorner(double passage, double thickness) {
    double low = 0;
    double high = 1;
    for (int at = 0; at < TURNS; at++) {
      double third = (high - low) / 3;
      if (reach(low + third, passage, thickness) < reach(high - third, passage, thickness)) {
        high -= third;
      } else {
        low += third;
      }
    }
    return Math.max(0, reach((low + high) / 2, passage, thickness));
  }

  /** At an angle whose half has the tangent {@code half}. */
  private double reach(double half, double passage, double thickness) {
    double sin = 2 * half / (1 + half * half);
    double cos = (1 - half * half) / (1 + half * half);
    return (passage * sin + width * cos - thickness) / (sin * cos);
  }

  /**
   * How long a stick is at most, held as steeply as the height allows.
   *
   * @param breadth of its section, the smaller side, mm
   * @param depth the greater one, mm
   */
  double longestStick(double breadth, double depth) {
    double level = longest(breadth);
    double run = Math.max(0, level - depth);
    double rise = Math.max(0, height - depth);
    return Double.isInfinite(level) ? level : Math.max(level, Math.sqrt(run * run + rise * rise));
  }

  /** Whether something flat passes upright on one of its edges, or flat where there is no turn. */
  boolean passes(double one, double other, double thickness) {
    boolean flat = turn.isEmpty() && Math.min(one, other) <= width + Tolerance.TOUCH;
    return upright(one, other, thickness)
        || upright(other, one, thickness)
        || (flat && thickness <= height);
  }

  private boolean upright(double tall, double along, double thickness) {
    return tall <= height + Tolerance.TOUCH
        && thickness <= width + Tolerance.TOUCH
        && along <= longest(thickness) + Tolerance.TOUCH;
  }

  /** How long the other side of something flat may be at most; 0 where nothing passes. */
  double mostBeside(double one, double thickness) {
    double upright = one <= longest(thickness) && thickness <= width ? height : 0;
    double lying = one <= height && thickness <= width ? longest(thickness) : 0;
    double flat = turn.isEmpty() && thickness <= height ? width : 0;
    return Math.max(upright, Math.max(lying, flat));
  }
}
