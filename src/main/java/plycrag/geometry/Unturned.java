package plycrag.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * What is left of an outline whose sides are moved past each other. A side that is shorter than its
 * neighbours come together vanishes, and those meet; where sides cross that are no neighbours, the
 * smaller of the loops that they make is cut off.
 *
 * @param corners counter-clockwise, none twice, the first not repeated
 */
public record Unturned(List<Corner> corners) {
  /**
   * A corner of an outline.
   *
   * @param at where it is, on the grid
   * @param side the number of the side that goes on from it
   */
  public record Corner(Coordinate at, int side) {}

  public Unturned {
    corners = List.copyOf(corners);
  }

  /**
   * The outline through corners, the first not repeated, counter-clockwise but for loops; sides
   * have the numbers of the corners they begin at. Where none cross it is the same.
   */
  public static Unturned of(List<Coordinate> corners) {
    return new Unturned(
        unturned(
            IntStream.range(0, corners.size())
                .mapToObj(at -> new Corner(corners.get(at), at))
                .toList()));
  }

  /**
   * An area without openings, every side moved outward by a distance of its own, its neighbours
   * made longer or shorter to meet it; what all of it is moved past is turned round.
   *
   * @param outward by the side's number, from the one after the first corner, mm
   * @throws IllegalArgumentException if two neighbours run along one line
   */
  public static Unturned moved(Polygon area, IntToDoubleFunction outward) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    List<Coordinate> corners = List.of(ring).subList(0, ring.length - 1);
    return new Unturned(unturned(MovedSides.of(corners, outward)));
  }

  /** The outline as an area whose first corner is the first one. */
  public Polygon area() {
    return Shapes.ring(corners.stream().map(Corner::at).toList());
  }

  /** What is left of a side, by its number; nothing where it vanished. */
  public Optional<LineString> side(int number) {
    List<LineString> lines = Shapes.outerEdges(area());
    return IntStream.range(0, corners.size())
        .filter(at -> corners.get(at).side == number)
        .mapToObj(lines::get)
        .max(Comparator.comparingDouble(LineString::getLength));
  }

  private static List<Corner> unturned(List<Corner> ring) {
    for (int one = 0; one < ring.size(); one++) {
      for (int other = one + 2; other < ring.size() - (one == 0 ? 1 : 0); other++) {
        Optional<Coordinate> crossing = crossing(ring, one, other);
        if (crossing.isPresent()) {
          return largest(ring, one, other, crossing.get());
        }
      }
    }
    return ring;
  }

  /** Of the two loops that a crossing makes, the one that takes more, itself without crossings. */
  private static List<Corner> largest(List<Corner> ring, int one, int other, Coordinate crossing) {
    List<Corner> between = new ArrayList<>(List.of(new Corner(crossing, ring.get(one).side)));
    between.addAll(ring.subList(one + 1, other + 1));
    List<Corner> around = new ArrayList<>(ring.subList(0, one + 1));
    around.add(new Corner(crossing, ring.get(other).side));
    around.addAll(ring.subList(other + 1, ring.size()));
    List<Corner> first = unturned(distinct(between));
    List<Corner> second = unturned(distinct(around));
    return area(first) > area(second) ? first : second;
  }

  private static List<Corner> distinct(List<Corner> ring) {
    return IntStream.range(0, ring.size())
        .filter(at -> !ring.get(at).at.equals2D(ring.get((at + 1) % ring.size()).at))
        .mapToObj(ring::get)
        .toList();
  }

  private static Optional<Coordinate> crossing(List<Corner> ring, int one, int other) {
    LineIntersector lines = new RobustLineIntersector();
    lines.setPrecisionModel(Shapes.GRID);
    lines.computeIntersection(
        ring.get(one).at, end(ring, one), ring.get(other).at, end(ring, other));
    return lines.hasIntersection()
        ? Optional.of(Shapes.at(lines.getIntersection(0).x, lines.getIntersection(0).y))
        : Optional.empty();
  }

  private static Coordinate end(List<Corner> ring, int side) {
    return ring.get((side + 1) % ring.size()).at;
  }

  /** mm², below zero for a ring that runs clockwise. */
  private static double area(List<Corner> ring) {
    return ring.size() < 3
        ? 0
        : -Area.ofRingSigned(Shapes.closed(ring.stream().map(Corner::at).toList()));
  }
}
