package plycrag.proof.replay;

import java.util.Optional;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Judges where the tool may go across. */
final class TravelCheck {
  private final Bench bench;

  /** Judges on one machine. */
  TravelCheck(Bench bench) {
    this.bench = bench;
  }

  /** What is wrong with a straight way. */
  Optional<String> fault(TipPlace from, TipPlace to, double radius) {
    Envelope travel = bench.travel().copy();
    travel.expandBy(Accuracy.DIGIT);
    if (!travel.contains(to.coordinate())) {
      return Optional.of("the tool leaves the machine's travel");
    }
    boolean low = Math.min(from.z(), to.z()) < bench.heights().travel().safe() - Accuracy.DIGIT;
    boolean near = bench.keepOuts().stream().anyMatch(box -> distance(from, to, box) < radius);
    return low && near ? Optional.of("the tool meets what it must keep out of") : Optional.empty();
  }

  private static double distance(TipPlace from, TipPlace to, Envelope box) {
    if (box.contains(to.coordinate())) {
      return 0;
    }
    Coordinate[] corners = {
      new Coordinate(box.getMinX(), box.getMinY()),
      new Coordinate(box.getMaxX(), box.getMinY()),
      new Coordinate(box.getMaxX(), box.getMaxY()),
      new Coordinate(box.getMinX(), box.getMaxY())
    };
    Coordinate start = Double.isFinite(from.x() + from.y()) ? from.coordinate() : to.coordinate();
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < corners.length; side++) {
      Coordinate next = corners[(side + 1) % corners.length];
      least =
          Math.min(least, Distance.segmentToSegment(start, to.coordinate(), corners[side], next));
    }
    return least;
  }
}
