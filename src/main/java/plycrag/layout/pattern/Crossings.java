package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.frame.BlockingRows;
import plycrag.layout.frame.FramePlan;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.solve.setout.CrossingMember;
import plycrag.wall.Wall;

/** The members that run right across a facet beside its columns, or beside its rows. */
final class Crossings {
  private final Wall wall;
  private final FramePlan plan;
  private final FramedFacet frame;
  private final Axis lines;

  private Crossings(Wall wall, FramePlan plan, FramedFacet frame, Axis lines) {
    this.wall = wall;
    this.plan = plan;
    this.frame = frame;
    this.lines = lines;
  }

  /**
   * A member beside lines.
   *
   * @param member where it is
   * @param isMovable whether it may move between those that are not
   */
  record Crossing(CrossingMember member, boolean isMovable) {}

  /**
   * Ascending; the outermost are fixed.
   *
   * @param plan where the members were planned
   * @param lines the way the lines run
   */
  static List<Crossing> of(Wall wall, FramePlan plan, FramedFacet frame, Axis lines) {
    return new Crossings(wall, plan, frame, lines).crossings();
  }

  private List<Crossing> crossings() {
    List<Crossing> crossings = new ArrayList<>(lines == Axis.UP ? studs() : levels());
    crossings.sort(Comparator.comparingDouble(crossing -> crossing.member().centre()));
    if (!crossings.isEmpty() && crossings.get(0).isMovable()) {
      CrossingMember first = crossings.get(0).member();
      crossings.add(0, end(Math.min(low(frameBox()), first.centre() - first.halfBreadth())));
    }
    if (!crossings.isEmpty() && crossings.get(crossings.size() - 1).isMovable()) {
      CrossingMember last = crossings.get(crossings.size() - 1).member();
      crossings.add(end(Math.max(high(frameBox()), last.centre() + last.halfBreadth())));
    }
    return crossings;
  }

  /**
   * Members that overlap are none of the set-out's business: all stay, and a rule tells of them.
   */
  static List<Crossing> keepingOffEachOther(List<Crossing> crossings) {
    for (int next = 1; next < crossings.size(); next++) {
      Crossing low = crossings.get(next - 1);
      Crossing high = crossings.get(next);
      double room =
          high.member().centre()
              - high.member().halfBreadth()
              - low.member().centre()
              - low.member().halfBreadth();
      if (Tolerance.isLess(room, 0) && (low.isMovable() || high.isMovable())) {
        return crossings.stream().map(one -> new Crossing(one.member(), false)).toList();
      }
    }
    return crossings;
  }

  /** Where a frame ends in a point or a slant; what was planned beyond it found no ground. */
  private static Crossing end(double place) {
    return new Crossing(new CrossingMember("the end", place, 0), false);
  }

  private Envelope frameBox() {
    Envelope box = new Envelope();
    frame.members().forEach(member -> box.expandToInclude(member.box()));
    return box;
  }

  private List<Crossing> studs() {
    return plan.studs().studs().stream()
        .map(
            stud ->
                crossing(
                    stud.fixity() == Fixity.OPENING ? "trimmer" : "stud",
                    stud.low(),
                    stud.high(),
                    plan.isMovable(stud)))
        .toList();
  }

  private List<Crossing> levels() {
    List<Crossing> levels = new ArrayList<>();
    for (Member member : frame.members()) {
      Crossing plate = crossing("plate", low(member.box()), high(member.box()), false);
      if (member.role() == MemberRole.PLATE && !levels.contains(plate)) {
        levels.add(plate);
      }
    }
    for (BlockingRows.Row row : plan.rows().rows()) {
      Backing backing = row.backing();
      Crossing blocking = crossing("blocking", backing.low(), backing.high(), row.isFree());
      if (!levels.contains(blocking)) {
        levels.add(blocking);
      }
    }
    return levels;
  }

  private Crossing crossing(String what, double low, double high, boolean isMovable) {
    double middle = (low + high) / 2;
    return new Crossing(
        new CrossingMember(
            wall.tape().placed(what, middle), middle, Shapes.onGrid((high - low) / 2)),
        isMovable);
  }

  private double low(Envelope box) {
    return lines.other().low(box);
  }

  private double high(Envelope box) {
    return lines.other().high(box);
  }
}
