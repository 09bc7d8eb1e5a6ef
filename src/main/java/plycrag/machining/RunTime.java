package plycrag.machining;

import java.util.List;
import plycrag.document.Move;
import plycrag.machining.Playback.Way;
import plycrag.wall.machine.MachineLimits;

/**
 * How long a program runs: waits, and every way from rest to rest, brought to speed and stopped at
 * the machine's acceleration. A machine that does not stop at every corner is faster.
 */
final class RunTime {
  private static final double SECONDS = 60;

  private RunTime() {}

  /** In seconds, without the time that a change of tool takes. */
  static double of(List<Move> moves, MachineLimits limits) {
    double waits =
        moves.stream()
            .filter(Move.Dwell.class::isInstance)
            .mapToDouble(move -> ((Move.Dwell) move).seconds())
            .sum();
    return waits + Playback.of(moves).stream().mapToDouble(way -> seconds(way, limits)).sum();
  }

  private static double seconds(Way way, MachineLimits limits) {
    double speed = (way.isRapid() ? limits.rapidRate() : way.feed()) / SECONDS;
    double braked = speed * speed / limits.acceleration();
    return way.length() >= braked
        ? way.length() / speed + speed / limits.acceleration()
        : 2 * Math.sqrt(way.length() / limits.acceleration());
  }
}
