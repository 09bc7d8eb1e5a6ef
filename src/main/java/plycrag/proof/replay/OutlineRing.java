package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Tolerance;

/** The ring between a piece and its waste, measured. */
final class OutlineRing {
  /** Samples lie no farther apart, mm. */
  private static final double STEP = 1;

  private final List<Coordinate> ring;
  private final boolean keeps;
  private final double turn;

  OutlineRing(Expected.Contour contour) {
    this.ring = List.of(contour.area().getExteriorRing().getCoordinates());
    this.keeps = contour.keeps();
    this.turn = Orientation.isCCW(corners()) == keeps ? 1 : -1;
  }

  /**
   * A place on the ring.
   *
   * @param wasteX across the ring into the waste, of length one
   * @param wasteY likewise
   * @param length of the ring that it stands for, mm
   */
  record Sample(Coordinate place, double wasteX, double wasteY, double length) {
    /** Where a tool of a radius must go to cut here. */
    Coordinate centre(double radius) {
      return new Coordinate(place.x + radius * wasteX, place.y + radius * wasteY);
    }
  }

  private Coordinate[] corners() {
    return ring.toArray(Coordinate[]::new);
  }

  /** How near the tool's centre comes to the ring. */
  double distance(CutMove cut) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 1; at < ring.size(); at++) {
      least = Math.min(least, cut.distance(ring.get(at - 1), ring.get(at)));
    }
    return least;
  }

  /** How near a place is to the ring. */
  double nearest(Coordinate place) {
    TipPlace at = new TipPlace(place.x, place.y, 0);
    return distance(new CutMove(0, at, at));
  }

  boolean isInWaste(Coordinate place) {
    return PointLocation.isInRing(place, corners()) != keeps;
  }

  /** Whether a tool of a radius can cut a sample without cutting the piece elsewhere. */
  boolean isReachable(Sample sample, double radius) {
    Coordinate centre = sample.centre(radius);
    TipPlace place = new TipPlace(centre.x, centre.y, 0);
    return isInWaste(centre) && Tolerance.atLeast(distance(new CutMove(0, place, place)), radius);
  }

  /** Places all along the ring, none at its corners. */
  List<Sample> samples() {
    List<Sample> samples = new ArrayList<>();
    for (int at = 1; at < ring.size(); at++) {
      addSamples(ring.get(at - 1), ring.get(at), samples);
    }
    return samples;
  }

  private void addSamples(Coordinate from, Coordinate to, List<Sample> samples) {
    double length = from.distance(to);
    int count = (int) Math.ceil(length / STEP);
    double dx = (to.x - from.x) / length;
    double dy = (to.y - from.y) / length;
    for (int at = 0; at < count; at++) {
      double along = (at + 0.5) * length / count;
      Coordinate place = new Coordinate(from.x + along * dx, from.y + along * dy);
      samples.add(new Sample(place, turn * dy, -turn * dx, length / count));
    }
  }
}
