package plycrag.layout.structure;

import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Direction;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.solve.fixing.TimberBody;

/**
 * A member as the line through the middle of its section, in the room.
 *
 * @param mark of the member
 * @param role what it is for
 * @param facet the name of its facet; empty for what holds facets up
 * @param start where the line leaves the timber at its lower or left end
 * @param end where it does at the other
 * @param across square to it, level with the sheets or in the plane of its support, of length one
 * @param breadth of its section along that, mm
 * @param depth of its section square to both, mm
 * @param body the whole of it
 */
public record MemberAxis(
    String mark,
    MemberRole role,
    String facet,
    Vector3 start,
    Vector3 end,
    Vector3 across,
    double breadth,
    double depth,
    Solid body) {

  /**
   * That of a member.
   *
   * @param facet the name of its facet, or empty
   * @param behind how far its near side lies behind the plane of its places, mm
   * @param toRoom from (u, v, w) of that plane to the room
   */
  static MemberAxis of(Member member, String facet, double behind, UnaryOperator<Vector3> toRoom) {
    Direction direction = member.direction();
    Point middle = member.section(member.depth() / 2).getCentroid();
    Vector3 inside = new Vector3(middle.getX(), middle.getY(), behind + member.depth() / 2);
    Vector3 way = way(direction, toRoom);
    Solid body = member.body(behind).mapped(toRoom);
    TimberBody timber = new TimberBody(member.mark(), body, way, false);
    Vector3 centre = toRoom.apply(inside);
    return new MemberAxis(
        member.mark(),
        member.role(),
        facet,
        centre.minus(way.times(timber.through(centre, way.times(-1)))),
        centre.plus(way.times(timber.through(centre, way))),
        way(direction.across(), toRoom),
        member.breadth(),
        member.depth(),
        body);
  }

  private static Vector3 way(Direction direction, UnaryOperator<Vector3> toRoom) {
    Vector3 onFacet = new Vector3(direction.u(), direction.v(), 0);
    return toRoom.apply(onFacet).minus(toRoom.apply(new Vector3(0, 0, 0))).unit();
  }

  /** From start to end, of length one. */
  public Vector3 way() {
    return end.minus(start).unit();
  }

  /** From start to end, mm. */
  public double length() {
    return end.minus(start).length();
  }

  /** The place so far along it, mm. */
  public Vector3 at(double along) {
    return start.plus(way().times(along));
  }

  /** How far along it the place on it is that is nearest to another, mm. */
  public double foot(Vector3 place) {
    return Math.max(0, Math.min(length(), place.minus(start).dot(way())));
  }

  /** How far a place is from it, mm. */
  double distance(Vector3 place) {
    return place.minus(at(foot(place))).length();
  }

  /** Whether it lies within a few degrees of level. */
  boolean isLevel() {
    return Math.abs(way().z()) < LEVEL;
  }

  /** Whether it runs along an axis of the room. */
  boolean runsStraight() {
    Vector3 way = way();
    return Math.max(Math.abs(way.x()), Math.max(Math.abs(way.y()), Math.abs(way.z()))) > STRAIGHT;
  }

  private static final double LEVEL = 0.1;
  private static final double STRAIGHT = 0.9999;
}
