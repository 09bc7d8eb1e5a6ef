package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;

/**
 * Where two walls that stand beside each other meet, from the floor up: the line in which their
 * faces cut each other. At every height each wall is a level line; where the two lines cross is a
 * place of the corner. It turns wherever one of the walls does.
 */
final class Corner {
  private final Run left;
  private final Run right;
  private final List<Stretch> stretches = new ArrayList<>();

  /**
   * A straight part of the line, which lies on one facet of each wall.
   *
   * @param leftLevel the number of the facet of the wall on the left, from the floor
   * @param rightLevel that of the wall on the right
   * @param onLeft the part in (u, v) of the left one's plane
   * @param onRight in that of the right one's
   * @param turn by how much the faces are turned toward each other, degrees; below zero apart
   */
  record Stretch(int leftLevel, int rightLevel, Part onLeft, Part onRight, double turn) {}

  /**
   * A straight line that nowhere goes down.
   *
   * @param low where it begins
   * @param high where it ends
   */
  record Part(Coordinate low, Coordinate high) {
    /** Its length, mm. */
    double length() {
      return low.distance(high);
    }
  }

  private Corner(Run left, Run right) {
    this.left = left;
    this.right = right;
  }

  /** The parts of the line from the floor up, as far as both walls go. */
  static List<Stretch> between(Run left, Run right) {
    Corner corner = new Corner(left, right);
    corner.climb();
    return corner.stretches;
  }

  /**
   * A place on a wall, by the facet's number and how far up its slope.
   *
   * @param run the wall
   * @param level the facet's number
   * @param v up its slope, mm
   */
  private record Reached(Run run, int level, double v) {
    static Reached lowest(Run run) {
      return new Reached(run, 0, 0);
    }

    boolean isOver() {
      return level == run.size();
    }

    private double length() {
      return run.given().get(level).length();
    }

    FacetPlane plane() {
      return run.planes().get(level);
    }

    /** Where u begins there, in the room. */
    Vector3 foot() {
      return plane().toRoom(new Vector3(0, v, 0));
    }

    /** The way along the wall, level, of length one. */
    Vector3 along() {
      return plane().toRoom(new Vector3(1, v, 0)).minus(foot());
    }

    /** How much higher the facet goes, mm; nothing where it is level. */
    double rise() {
      return Math.max(0, plane().z(length(), 0) - plane().z(v, 0));
    }

    /** So much higher on the same facet. */
    Reached higher(double rise) {
      return new Reached(run, level, v + rise / Trig.cos(plane().angle()));
    }

    /** The end of the facet. */
    Reached end() {
      return new Reached(run, level, length());
    }

    /** The same place on the facet above if this is the end of one. */
    Reached settled() {
      return length() - v < Tolerance.TOUCH ? new Reached(run, level + 1, 0) : this;
    }
  }

  private void climb() {
    Reached one = Reached.lowest(left);
    Reached other = Reached.lowest(right);
    while (!one.isOver() && !other.isOver()) {
      double rise = one.rise() - other.rise();
      boolean together = Math.abs(rise) < Tolerance.TOUCH;
      Reached oneNext = together || rise < 0 ? one.end() : one.higher(other.rise());
      Reached otherNext = together || rise > 0 ? other.end() : other.higher(one.rise());
      add(one, oneNext, other, otherNext);
      one = oneNext.settled();
      other = otherNext.settled();
    }
  }

  private void add(Reached one, Reached oneNext, Reached other, Reached otherNext) {
    if (right.turn() == 0 && !isOnePlane(one, other)) {
      return;
    }
    Part onLeft = new Part(onLeft(one, other), onLeft(oneNext, otherNext));
    Part onRight = new Part(onRight(one, other), onRight(oneNext, otherNext));
    if (onLeft.length() > Tolerance.TOUCH) {
      stretches.add(new Stretch(one.level(), other.level(), onLeft, onRight, turn(one, other)));
    }
  }

  private static boolean isOnePlane(Reached one, Reached other) {
    return one.plane().angle() == other.plane().angle()
        && Math.abs(one.plane().y(one.v(), 0) - other.plane().y(other.v(), 0)) < Tolerance.TOUCH;
  }

  private Coordinate onLeft(Reached one, Reached other) {
    double u =
        right.turn() == 0 ? left.given().get(0).width() - one.plane().left() : crossing(one, other);
    return new Coordinate(u, one.v());
  }

  private Coordinate onRight(Reached one, Reached other) {
    double u = right.turn() == 0 ? -other.plane().left() : crossing(other, one);
    return new Coordinate(u, other.v());
  }

  /** The u on one wall at which the level line of the other crosses its own. */
  private static double crossing(Reached on, Reached by) {
    Vector3 way = by.foot().minus(on.foot());
    Vector3 along = on.along();
    Vector3 beyond = by.along();
    return way.cross(beyond).z() / along.cross(beyond).z();
  }

  private double turn(Reached one, Reached other) {
    Vector3 face = one.plane().normal();
    Vector3 beyond = other.plane().normal();
    double between = Trig.angle(face.cross(beyond).length(), face.dot(beyond));
    return right.turn() < 0 ? -between : between + 0.0;
  }
}
