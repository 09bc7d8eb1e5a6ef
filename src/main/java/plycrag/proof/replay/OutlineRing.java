package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
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

  /**
   * Whether a cut stays no farther in the waste than the way of a tool: beside one side of the ring
   * as far as the corners of that way or into the air, or round a corner of the ring.
   *
   * @param radius of the tool, mm
   * @param inWood whether a place lies where there is wood to be cut
   */
  boolean isFollowed(CutMove cut, double radius, Predicate<Coordinate> inWood) {
    Coordinate from = cut.from().coordinate();
    Coordinate to = cut.to().coordinate();
    for (int side = 0; side < ring.size() - 1; side++) {
      if (isBeside(side, from, radius, inWood) && isBeside(side, to, radius, inWood)) {
        return true;
      }
    }
    return isRound(from, radius) && isRound(to, radius) && isRound(cut.middle(), radius);
  }

  private boolean isRound(Coordinate place, double radius) {
    return nearest(place) <= radius + Accuracy.SIZE;
  }

  private boolean isBeside(
      int side, Coordinate place, double radius, Predicate<Coordinate> inWood) {
    double beside = away(side, place);
    if (beside < 0 || beside > radius + Accuracy.SIZE) {
      return false;
    }
    int sides = ring.size() - 1;
    Coordinate from = ring.get(side);
    Coordinate to = ring.get(side + 1);
    double along = (place.x - from.x) * (to.x - from.x) + (place.y - from.y) * (to.y - from.y);
    double length = from.distance(to);
    double most = inWood.test(place) ? radius + Accuracy.SIZE : Double.POSITIVE_INFINITY;
    return (along >= 0 || away((side + sides - 1) % sides, place) <= most)
        && (along <= length * length || away((side + 1) % sides, place) <= most);
  }

  /** How far a place lies off the line of a side, on the waste's side of it. */
  private double away(int side, Coordinate place) {
    Coordinate from = ring.get(side);
    Coordinate to = ring.get(side + 1);
    double across = (to.y - from.y) * (place.x - from.x) - (to.x - from.x) * (place.y - from.y);
    return turn * across / from.distance(to);
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
