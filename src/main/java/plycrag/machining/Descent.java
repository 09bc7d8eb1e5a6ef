package plycrag.machining;

import plycrag.geometry.Tolerance;
import plycrag.wall.machine.Tool;

/**
 * How fast a tool goes along a way that falls: as fast as it cuts sideways, but down no faster than
 * it plunges. What a default or a user's feeds make too fast is slowed here, and nobody is asked.
 */
final class Descent {
  /**
   * By how much the ends of a way may be written nearer to each other, or further apart in height,
   * than they are, mm: half of the last digit at either end, which in inches is a ten-thousandth.
   */
  private static final double WRITTEN = 0.0026;

  private Descent() {}

  /**
   * The feed along a straight way.
   *
   * @param beside how far the way goes across, mm
   * @param down how far it falls meanwhile, mm; below zero it rises
   * @return mm/min
   */
  static double feed(Tool tool, double beside, double down) {
    Tool.Feeds feeds = tool.drive().feeds();
    if (!(down > Tolerance.RECKONING)) {
      return feeds.cut();
    }
    double slowed = feeds.plunge() * (beside - WRITTEN) / (down + WRITTEN);
    return Math.min(feeds.cut(), slowed);
  }
}
