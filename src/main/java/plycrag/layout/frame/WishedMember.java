package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;

/**
 * Where a member is wished to lie, before the ground says how much of that it gets.
 *
 * @param role what it is for
 * @param fixity what keeps it there
 * @param direction the way it runs
 * @param area against the sheets' back, in (u, v), two sides of it along the direction
 * @param depth how far it reaches behind the sheets' back, mm
 * @param lean how far it moves across its direction for each millimetre behind them
 */
public record WishedMember(
    MemberRole role, Fixity fixity, Direction direction, Polygon area, double depth, double lean) {

  /** One that runs up, square to the sheets. */
  static WishedMember up(MemberRole role, StudPlan.Stud stud, double low, double high) {
    return new WishedMember(
        role,
        stud.fixity(),
        Direction.UP,
        Shapes.rectangle(stud.low(), low, stud.high(), high),
        stud.depth(),
        stud.lean());
  }

  /** One that runs level, square to the sheets. */
  static WishedMember level(MemberRole role, Backing backing, double left, double right) {
    return new WishedMember(
        role,
        backing.fixity(),
        Direction.LEVEL,
        Shapes.rectangle(left, backing.low(), right, backing.high()),
        backing.depth(),
        0);
  }

  /** Where it lies along its direction, mm. */
  Direction.Span along() {
    return direction.span(area);
  }

  /** Where it lies across its direction, mm. */
  Direction.Span beside() {
    return direction.across().span(area);
  }

  /** The same from one place along it to another only. */
  WishedMember part(double low, double high) {
    return new WishedMember(role, fixity, direction, between(low, high), depth, lean);
  }

  /** The part of its breadth from one place along it to another. */
  Polygon between(double low, double high) {
    return between(low, high, beside());
  }

  /** The same of a part of its breadth. */
  Polygon between(double low, double high, Direction.Span beside) {
    List<Coordinate> corners = new ArrayList<>();
    corners.add(direction.place(low, beside.low()));
    corners.add(direction.place(high, beside.low()));
    corners.add(direction.place(high, beside.high()));
    corners.add(direction.place(low, beside.high()));
    return Shapes.polygon(corners);
  }
}
