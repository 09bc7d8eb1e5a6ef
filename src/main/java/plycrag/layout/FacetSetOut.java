package plycrag.layout;

import java.util.List;
import plycrag.params.InsertParameters;
import plycrag.wall.Wall;

/**
 * The pattern of a facet with columns and rows set out, and the frame's movable members with them.
 *
 * @param asked what the pattern asks for
 * @param columns set out against what runs up
 * @param rows set out against what runs across
 * @param blocked inserts with something in their way, had nothing been moved
 */
record FacetSetOut(PatternLines asked, AxisSetOut columns, AxisSetOut rows, int blocked) {

  /**
   * Sets out a facet.
   *
   * @param plan where its members were planned first
   * @param frame its frame as it was laid out first
   * @param neighbours the members of other facets
   */
  static FacetSetOut of(Wall wall, FramePlan plan, FramedFacet frame, List<Neighbour> neighbours) {
    PatternLines asked = InsertPattern.of(wall, frame.facet());
    InsertSurroundings first = new InsertSurroundings(wall, frame, neighbours, List.of());
    int blocked =
        (int) asked.inserts().stream().filter(one -> !first.all(one.centre()).isEmpty()).count();
    return new FacetSetOut(
        asked,
        axis(wall, new AxisTask(wall, plan, frame, neighbours, Axis.UP), Axis.UP, asked),
        axis(wall, new AxisTask(wall, plan, frame, neighbours, Axis.ACROSS), Axis.ACROSS, asked),
        blocked);
  }

  private static AxisSetOut axis(Wall wall, AxisTask task, Axis lines, PatternLines asked) {
    return AxisSetOut.of(
        task, lines, asked.along(lines), wall.inserts().whenBlocked(), wall.tape());
  }

  /** The lines where they are now. */
  PatternLines lines() {
    return asked.with(Axis.UP, columns.places()).with(Axis.ACROSS, rows.places());
  }

  /** The set-out of one axis. */
  AxisSetOut along(Axis axis) {
    return axis == Axis.UP ? columns : rows;
  }

  /** The same with one axis set out otherwise. */
  FacetSetOut with(AxisSetOut other) {
    return other.lines() == Axis.UP
        ? new FacetSetOut(asked, other, rows, blocked)
        : new FacetSetOut(asked, columns, other, blocked);
  }

  /** A plan with the movable members where they were set out. */
  FramePlan settled(FramePlan plan) {
    return plan.with(columns.settled(), rows.settled());
  }

  /** What is to be told of it. */
  Setting told(InsertParameters inserts) {
    return new Setting(
        List.of(columns.told(inserts), rows.told(inserts)), asked.cells().size(), blocked);
  }
}
