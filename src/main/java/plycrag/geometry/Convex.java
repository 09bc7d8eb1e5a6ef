package plycrag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Intersection;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * What overlays of convex areas come to, by cutting one along the sides of the other (Sutherland
 * and Hodgman, 1974): the same as an overlay on the grid would give, at a small part of the cost.
 * Where something else is asked for, there is no answer.
 *
 * <p>As in an overlay on the grid, a corner within a step of a side lies on it, and every new
 * corner is where two sides that were given meet, however often they are cut.
 */
final class Convex {
  private Convex() {}

  /** A side as it was given; what is on its left is kept. */
  private record Side(Coordinate from, Coordinate to) {
    /** How far on the left of it a place lies, mm; nothing if within a step. */
    double left(Coordinate place) {
      double du = to.x - from.x;
      double dv = to.y - from.y;
      double left =
          (du * (place.y - from.y) - dv * (place.x - from.x)) / Math.sqrt(du * du + dv * dv);
      return Math.abs(left) <= Tolerance.GRID ? 0 : left;
    }

    Coordinate meeting(Side other) {
      Coordinate place = Intersection.intersection(from, to, other.from, other.to);
      return Shapes.at(place.x, place.y);
    }

    Side turned() {
      return new Side(to, from);
    }
  }

  /** A corner and the side that goes on from it. */
  private record Corner(Coordinate at, Side side) {}

  /** Whether an area without holes turns one way at all of its corners. */
  static boolean is(Polygon area) {
    return area.getNumInteriorRing() == 0
        && !area.isEmpty()
        && turns(area.getExteriorRing().getCoordinates()) != 0;
  }

  /** The way a ring turns at all of its corners, -1, 1, or 0 if that differs. */
  private static int turns(Coordinate... ring) {
    int sides = ring.length - 1;
    int turns = 0;
    for (int at = 0; at < sides; at++) {
      int turn = Orientation.index(ring[at], ring[at + 1], ring[(at + 2) % sides]);
      if (turn * turns < 0) {
        return 0;
      }
      turns = turn == 0 ? turns : turn;
    }
    return turns;
  }

  /** What two areas share, one or none; ordered as {@link Shapes#areas} has it. */
  static Optional<List<Polygon>> shared(Polygon one, Polygon other) {
    if (!is(one) || !is(other)) {
      return Optional.empty();
    }
    List<Corner> rest = corners(one);
    for (Corner corner : corners(other)) {
      rest = kept(rest, corner.side);
    }
    return Optional.of(isArea(rest) ? List.of(Rings.ordered(area(rest))) : List.of());
  }

  /**
   * What is left of an area without another that divides it by sides which do not meet in it, such
   * as one that lies across it or covers one end.
   */
  static Optional<List<Polygon>> without(Polygon area, Polygon other) {
    if (!is(area) || !is(other)) {
      return Optional.empty();
    }
    List<Side> cuts = new ArrayList<>();
    List<List<Corner>> rest = new ArrayList<>();
    for (Corner corner : corners(other)) {
      Side cut = corner.side.turned();
      List<Corner> beyond = kept(corners(area), cut);
      if (isArea(beyond)) {
        if (cuts.stream().anyMatch(one -> isArea(kept(beyond, one)))) {
          return Optional.empty();
        }
        cuts.add(cut);
        rest.add(beyond);
      }
    }
    return Optional.of(rest.stream().map(Convex::area).toList());
  }

  /** The part of a straight line inside a convex area, as its two ends; empty if it has none. */
  static Optional<List<Coordinate>> shared(Polygon area, Coordinate from, Coordinate to) {
    Side line = new Side(Shapes.at(from.x, from.y), Shapes.at(to.x, to.y));
    Coordinate low = line.from;
    Coordinate high = line.to;
    for (Corner corner : corners(area)) {
      double first = corner.side.left(low);
      double last = corner.side.left(high);
      if (Math.max(first, last) <= 0 && Math.min(first, last) < 0) {
        return Optional.empty();
      }
      low = first < 0 ? line.meeting(corner.side) : low;
      high = last < 0 ? line.meeting(corner.side) : high;
    }
    return low.equals2D(high) ? Optional.empty() : Optional.of(List.of(low, high));
  }

  /** Counter-clockwise. */
  private static List<Corner> corners(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    List<Coordinate> places = new ArrayList<>();
    Arrays.stream(ring).limit(ring.length - 1L).forEach(at -> places.add(Shapes.at(at.x, at.y)));
    if (turns(ring) < 0) {
      Collections.reverse(places);
    }
    List<Corner> corners = new ArrayList<>();
    for (int at = 0; at < places.size(); at++) {
      Coordinate next = places.get((at + 1) % places.size());
      corners.add(new Corner(places.get(at), new Side(places.get(at), next)));
    }
    return corners;
  }

  /** What lies on the left of a cut. */
  private static List<Corner> kept(List<Corner> corners, Side cut) {
    List<Corner> kept = new ArrayList<>();
    for (int at = 0; at < corners.size(); at++) {
      Corner corner = corners.get(at);
      double here = cut.left(corner.at);
      double next = cut.left(corners.get((at + 1) % corners.size()).at);
      if (here > 0 || (here == 0 && next >= 0)) {
        kept.add(corner);
      } else if (here == 0) {
        kept.add(new Corner(corner.at, cut));
      }
      if (here * next < 0) {
        kept.add(new Corner(corner.side.meeting(cut), here > 0 ? cut : corner.side));
      }
    }
    return kept;
  }

  private static boolean isArea(List<Corner> corners) {
    double twice = 0;
    for (int at = 2; at < corners.size(); at++) {
      Coordinate from = corners.get(0).at;
      Coordinate one = corners.get(at - 1).at;
      Coordinate other = corners.get(at).at;
      twice += (one.x - from.x) * (other.y - from.y) - (one.y - from.y) * (other.x - from.x);
    }
    return twice > 0;
  }

  private static Polygon area(List<Corner> corners) {
    List<Coordinate> places = new ArrayList<>();
    for (Corner corner : corners) {
      if (places.isEmpty() || !corner.at.equals2D(places.get(places.size() - 1))) {
        places.add(corner.at);
      }
    }
    return Shapes.factory().createPolygon(Shapes.closed(places));
  }
}
