package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.geometry.Tolerance;

/**
 * A face of timber as it lies flat: straight-sided and convex.
 *
 * @param corners in order round it; may be none
 * @param grain the way of the grain, of length one
 */
record FlatFace(List<FacePlace> corners, FacePlace grain) {
  FlatFace {
    corners = List.copyOf(corners);
  }

  boolean isNothing() {
    return corners.size() < 3;
  }

  /** The part of it where a function of the place, linear, is zero or more. */
  FlatFace where(ToDoubleFunction<FacePlace> function) {
    List<FacePlace> kept = new ArrayList<>();
    for (int at = 0; at < corners.size(); at++) {
      FacePlace from = corners.get(at);
      FacePlace to = corners.get((at + 1) % corners.size());
      double one = function.applyAsDouble(from);
      double other = function.applyAsDouble(to);
      if (one >= 0) {
        kept.add(from);
      }
      if (one * other < 0) {
        kept.add(from.toward(to, one / (one - other)));
      }
    }
    return new FlatFace(kept, grain);
  }

  /**
   * The part of an area that keeps off its sides and ends, those that slant as both.
   *
   * @param side across the grain, mm
   * @param end along the grain, mm
   */
  FlatFace kept(FlatFace area, double side, double end) {
    return kept(area, outward -> asked(outward, side, end));
  }

  /**
   * The part of an area that keeps off each of its edges.
   *
   * @param off how far, mm, by the way out of this face at an edge, of length one
   */
  FlatFace kept(FlatFace area, ToDoubleFunction<FacePlace> off) {
    FlatFace rest = area;
    for (int at = 0; at < corners.size(); at++) {
      FacePlace from = corners.get(at);
      FacePlace way = corners.get((at + 1) % corners.size()).minus(from);
      if (way.length() > Tolerance.VANISHING) {
        double turn = turn();
        double asked = off.applyAsDouble(outward(way));
        rest =
            rest.where(
                spot ->
                    turn * way.cross(spot.minus(from)) / way.length()
                        - asked
                        + Tolerance.VANISHING);
      }
    }
    return rest;
  }

  /** How far a place lies inside what keeps off sides and ends; below zero outside, mm. */
  double slack(FacePlace spot, double side, double end) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < corners.size(); at++) {
      FacePlace from = corners.get(at);
      FacePlace way = corners.get((at + 1) % corners.size()).minus(from);
      if (way.length() > Tolerance.VANISHING) {
        double inside = turn() * way.cross(spot.minus(from)) / way.length();
        least = Math.min(least, inside - asked(outward(way), side, end));
      }
    }
    return least;
  }

  /** Square to an edge, away from the face, of length one. */
  private FacePlace outward(FacePlace way) {
    double turned = turn() / way.length();
    return new FacePlace(turned * way.across(), -turned * way.along());
  }

  /** What slants is as much of an end as its outward way runs with the grain. */
  private double asked(FacePlace outward, double side, double end) {
    return Math.max(end * Math.abs(outward.dot(grain)), side * Math.abs(outward.cross(grain)));
  }

  /** 1 if the corners run counter-clockwise, else -1. */
  private double turn() {
    double area = 0;
    for (int at = 0; at < corners.size(); at++) {
      area += corners.get(at).cross(corners.get((at + 1) % corners.size()));
    }
    return Math.signum(area);
  }

  double least(ToDoubleFunction<FacePlace> measure) {
    return corners.stream().mapToDouble(measure).min().orElse(Double.POSITIVE_INFINITY);
  }

  double most(ToDoubleFunction<FacePlace> measure) {
    return corners.stream().mapToDouble(measure).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** What of it lies on a line, as a face without breadth. */
  FlatFace onLine(double across) {
    return where(spot -> spot.across() - across + Tolerance.VANISHING)
        .where(spot -> across - spot.across() + Tolerance.VANISHING);
  }
}
