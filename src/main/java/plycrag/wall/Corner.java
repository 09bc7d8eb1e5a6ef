package plycrag.wall;

import plycrag.geometry.FacetPlane;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;

/**
 * Where two walls meet, at one height: the line in which the planes of their facets cut each other.
 */
final class Corner {
  private final FacetPlane left;
  private final FacetPlane right;
  private final double turn;

  /**
   * @param left the plane of the facet on the left
   * @param right that of the facet on the right
   * @param turn how far the right wall is turned from the left one, seen from above, degrees
   */
  Corner(FacetPlane left, FacetPlane right, double turn) {
    this.left = left;
    this.right = right;
    this.turn = turn;
  }

  /** How far the corner moves to the right on the left facet for each millimetre up its slope. */
  double slopeOnLeft() {
    return slopeOn(left);
  }

  /** The same on the right facet. */
  double slopeOnRight() {
    return slopeOn(right);
  }

  private double slopeOn(FacetPlane plane) {
    Vector3 line = left.normal().cross(right.normal());
    Vector3 foot = plane.toRoom(new Vector3(0, 0, 0));
    Vector3 onPlane = plane.fromRoom(foot.plus(line));
    return onPlane.x() / onPlane.y();
  }

  /** By how much the faces are turned toward each other, degrees; below zero apart. */
  double angle() {
    Vector3 one = left.normal();
    Vector3 other = right.normal();
    double between = Trig.angle(one.cross(other).length(), one.dot(other));
    return turn < 0 ? -between : between;
  }
}
