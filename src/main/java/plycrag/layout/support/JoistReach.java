package plycrag.layout.support;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Tolerance;
import plycrag.wall.Wall;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.Room.Joists;
import plycrag.wall.room.Room.Members;
import plycrag.wall.room.Room.Run;
import plycrag.wall.room.Room.Sides;

/**
 * How far ledgers under joists go on beyond what hangs on them, so that no hanger is beyond the
 * last joist: to the next joist on either side, where the room has the width for it.
 */
final class JoistReach {
  private final Wall wall;
  private final RunSite run;

  JoistReach(Wall wall, RunSite run) {
    this.wall = wall;
    this.run = run;
  }

  /**
   * What ledgers reach, x of the run, mm.
   *
   * @param isAlone whether no other run is near
   */
  Span of(boolean isAlone) {
    List<Double> stations = run.site().stations();
    double half = wall.frame().breadth() / 2;
    Span middles = new Span(stations.get(0) + half, stations.get(stations.size() - 1) + half);
    Span over = new Span(middles.low() - half, middles.high() + half);
    Ceiling ceiling = wall.room().ceiling();
    if (!isAlone || ceiling.members() != Members.JOISTS || ceiling.joists().run() != Run.OUT) {
      return over;
    }
    Sides sides = wall.room().sides();
    return new Span(
        fits(sides.left(), 0 - joist(middles.low(), false) + Anchor.FROM_END)
            ? Math.min(over.low(), joist(middles.low(), false) - Anchor.FROM_END)
            : over.low(),
        fits(sides.right(), joist(middles.high(), true) + Anchor.FROM_END - wall.frontWidth())
            ? Math.max(over.high(), joist(middles.high(), true) + Anchor.FROM_END)
            : over.high());
  }

  /** The middle of the joist at a place, or of the next one beyond it. */
  private double joist(double place, boolean isRight) {
    Joists joists = wall.room().ceiling().joists();
    double first = run.fromLeft(joists.first());
    double spaces = (place - first) / joists.spacing();
    double whole = isRight ? Tolerance.wholeUp(spaces) : Tolerance.wholeDown(spaces);
    return first + whole * joists.spacing();
  }

  private static boolean fits(Optional<Double> room, double beyond) {
    return room.isEmpty() || Tolerance.atMost(beyond, room.get());
  }
}
