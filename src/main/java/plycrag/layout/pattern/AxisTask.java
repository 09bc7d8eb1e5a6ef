package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import plycrag.layout.pattern.Crossings.Crossing;
import plycrag.layout.skin.Axis;
import plycrag.solve.setout.AskedLine;
import plycrag.solve.setout.Bay;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.solve.setout.Limits;
import plycrag.solve.setout.Task;
import plycrag.wall.Pattern;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.Pattern.Symmetry;
import plycrag.wall.Wall;

/**
 * The columns or the rows of an area and what lies across them.
 *
 * @param area whose lines they are
 * @param lines the way they run
 * @param crossings members right across, ascending, the outermost fixed; none in a zone, which
 *     moves no member
 * @param keepouts of everything else
 */
record AxisTask(
    PatternArea area, Axis lines, List<Crossing> crossings, List<ForbiddenStretch> keepouts) {
  AxisTask {
    crossings = List.copyOf(crossings);
    keepouts = List.copyOf(keepouts);
  }

  /**
   * The task for lines at given places, ascending, mm.
   *
   * @param beside what is left beside members more than there must be, mm
   */
  Task task(List<Double> wanted, double beside) {
    List<AskedLine> named = new ArrayList<>();
    for (int at = 0; at < wanted.size(); at++) {
      named.add(new AskedLine((lines == Axis.UP ? "column " : "row ") + (at + 1), wanted.get(at)));
    }
    List<plycrag.solve.setout.CrossingMember> fixed = new ArrayList<>();
    List<Bay> bays = new ArrayList<>();
    List<plycrag.solve.setout.CrossingMember> free = new ArrayList<>();
    for (Crossing crossing : Crossings.keepingOffEachOther(crossings)) {
      if (crossing.isMovable()) {
        free.add(crossing.member());
      } else {
        if (!free.isEmpty()) {
          bays.add(new Bay(fixed.size() - 1, greatestSpacing(), free));
          free = new ArrayList<>();
        }
        fixed.add(crossing.member());
      }
    }
    return new Task(named, keepouts, fixed, bays, limits(beside));
  }

  /** Whether the lines are to mirror each other. */
  boolean isMirrored() {
    return lines == Axis.UP && area.pattern().fit().symmetry() == Symmetry.LEFT_RIGHT;
  }

  /** Whether, of what is as good, that further to the right is chosen. */
  boolean isFromRight() {
    return lines == Axis.UP && area.wall().isMirrored();
  }

  /** The facet's size across the lines, mm. */
  double extent() {
    return lines.other().size(area.facet().boundary().getEnvelopeInternal());
  }

  /** The middles of the movable members as they are laid out first, mm. */
  List<Double> movable() {
    return crossings.stream()
        .filter(Crossing::isMovable)
        .map(crossing -> crossing.member().centre())
        .toList();
  }

  /** Where a support may end on a stud, room for plywood on either side of it; else 0; mm. */
  double besideMembers() {
    return lines == Axis.UP && area.isHeld() ? area.wall().sheet().thickness() : 0;
  }

  private Limits limits(double beside) {
    Wall wall = area.wall();
    return new Limits(
        wall.tape().unit().markingGrid(),
        wall.insertToTimber() + beside,
        toLine(area.pattern()),
        wall.inserts().blocked().greatestMove());
  }

  /**
   * From one line to the next, mm. Of neighbouring columns only every second one has an insert in
   * the same row, in an offset. Listed places keep apart one by one.
   */
  private double toLine(Pattern pattern) {
    if (pattern.kind() == Kind.FILE) {
      return 0;
    }
    double reach = InsertSurroundings.reach(area.wall());
    boolean alternates =
        pattern.kind() == Kind.OFFSET
            && Math.min(pattern.pitch().up(), pattern.pitch().topUp()) >= reach;
    return lines == Axis.UP && alternates ? reach / 2 : reach;
  }

  private double greatestSpacing() {
    return lines == Axis.UP
        ? area.wall().frame().studSpacing()
        : area.wall().frame().blockingSpacing().orElseThrow();
  }
}
