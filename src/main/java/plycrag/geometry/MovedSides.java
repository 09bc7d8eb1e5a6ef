package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * The sides of an outline, each moved outward by a distance of its own. One that its neighbours are
 * moved past vanishes, the one first that does so first, and those meet: as all sides move at once
 * (Aichholzer and Aurenhammer, 1996, whose roofs shrink in the same way).
 */
final class MovedSides {
  private final List<Side> sides = new ArrayList<>();

  /**
   * A side and how far it is moved to its right.
   *
   * @param number its number in the outline
   * @param line from one corner of the outline to the next, which may be further away once others
   *     have vanished
   * @param outward mm
   */
  private record Side(int number, LineSegment line, double outward) {
    Coordinate way() {
      return Offsets.way(line.p0, line.p1);
    }

    boolean isParallel(Side other) {
      Coordinate one = way();
      Coordinate two = other.way();
      double sine = one.x * two.y - one.y * two.x;
      return Math.abs(sine) < Tolerance.PARALLEL * line.getLength() * other.line.getLength();
    }

    /** Where the next side begins. */
    Coordinate meeting(Side next) {
      Coordinate corner =
          line.p1.equals2D(next.line.p0) ? line.p1 : line.lineIntersection(next.line);
      return Offsets.meeting(corner, way(), next.way(), outward, next.outward);
    }

    /** How long it is from one place to another on it, in parts of what it was. */
    double left(Coordinate from, Coordinate to) {
      return line.projectionFactor(to) - line.projectionFactor(from);
    }
  }

  private MovedSides(List<Coordinate> ring, IntToDoubleFunction outward) {
    for (int side = 0; side < ring.size(); side++) {
      LineSegment line = new LineSegment(ring.get(side), ring.get((side + 1) % ring.size()));
      sides.add(new Side(side, line, outward.applyAsDouble(side)));
    }
  }

  /** The corners at which what is left of the sides begins. */
  static List<Unturned.Corner> of(List<Coordinate> ring, IntToDoubleFunction outward) {
    MovedSides moved = new MovedSides(ring, outward);
    for (Optional<Side> gone = moved.vanished(); gone.isPresent(); gone = moved.vanished()) {
      moved.sides.remove(gone.get());
    }
    return moved.corners();
  }

  private Optional<Side> vanished() {
    List<Unturned.Corner> corners = corners();
    Optional<Side> first = Optional.empty();
    double least = 0;
    for (int at = 0; at < sides.size() && sides.size() > 3; at++) {
      double left = sides.get(at).left(corners.get(at).at(), corners.get(next(at)).at());
      if (left < least && !sides.get(before(at)).isParallel(sides.get(next(at)))) {
        least = left;
        first = Optional.of(sides.get(at));
      }
    }
    return first;
  }

  private List<Unturned.Corner> corners() {
    List<Unturned.Corner> corners = new ArrayList<>();
    for (int at = 0; at < sides.size(); at++) {
      Side side = sides.get(at);
      corners.add(new Unturned.Corner(sides.get(before(at)).meeting(side), side.number));
    }
    return corners;
  }

  private int before(int at) {
    return (at + sides.size() - 1) % sides.size();
  }

  private int next(int at) {
    return (at + 1) % sides.size();
  }
}
