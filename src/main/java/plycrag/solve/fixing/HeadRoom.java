package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Vector3;

/**
 * Where heads, washers and nuts would meet other timber on the outer sides of two members.
 *
 * @param lap the face that the two share
 * @param first through which screws go
 * @param second into which they go
 * @param others the timber around
 */
record HeadRoom(Lap lap, TimberBody first, TimberBody second, List<TimberBody> others) {
  /** Timber nearer to the outer side than this touches it, mm. */
  private static final double TOUCH = 0.5;

  /** As far out as heads and nuts reach, mm. */
  private static final double HIGH = 15;

  /**
   * The stretches of a line along both that other timber takes.
   *
   * @param line across, mm
   * @param radius of a head or a washer, mm
   * @param nuts whether there is something on the second one's outer side too
   */
  List<Span> taken(double line, double radius, boolean nuts) {
    List<Span> taken = new ArrayList<>(taken(first, lap.outward().times(-1), line, radius));
    if (nuts) {
      taken.addAll(taken(second, lap.outward(), line, radius));
    }
    return taken;
  }

  private List<Span> taken(TimberBody through, Vector3 outward, double line, double radius) {
    double middle =
        (lap.shared().least(FacePlace::along) + lap.shared().most(FacePlace::along)) / 2;
    Vector3 on = lap.corner().plus(lap.along().times(middle)).plus(lap.across().times(line));
    double thick = through.through(on, outward);
    FaceCorridor window =
        new FaceCorridor(
            lap.corner(),
            lap.along(),
            lap.across(),
            outward,
            new Span(line - radius, line + radius),
            new Span(thick + TOUCH, thick + HIGH));
    return others.stream()
        .flatMap(other -> window.met(other.solid()).stream())
        .map(span -> new Span(span.low() - radius, span.high() + radius))
        .toList();
  }
}
