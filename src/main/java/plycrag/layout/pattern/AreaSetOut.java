package plycrag.layout.pattern;

import java.util.List;
import plycrag.layout.frame.FramePlan;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.pattern.Crossings.Crossing;
import plycrag.layout.skin.Axis;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.wall.Wall;

/**
 * The pattern of an area with columns and rows set out, and with those of a facet its movable
 * members.
 *
 * @param area whose they are
 * @param asked what the pattern asks for
 * @param columns set out against what runs up
 * @param rows set out against what runs across
 * @param blocked inserts with something in their way, had nothing been moved
 */
public record AreaSetOut(
    PatternArea area, PatternLines asked, AxisSetOut columns, AxisSetOut rows, int blocked) {

  /**
   * Sets out a facet.
   *
   * @param around what stands in the way, with its frame as it was laid out first
   * @param plan where its members were planned first
   */
  public static AreaSetOut ofFacet(PatternArea area, InsertSurroundings around, FramePlan plan) {
    FramedFacet frame = around.site().frame();
    return of(
        area,
        around,
        lines -> {
          List<Crossing> crossings = Crossings.of(area.wall(), plan, frame, lines);
          List<ForbiddenStretch> keepouts = AxisKeepouts.ofFacet(area, around, plan, lines);
          return new AxisTask(area, lines, crossings, keepouts);
        });
  }

  /**
   * Sets out a zone against members that stay.
   *
   * @param around what stands in the way, with the facet's frame as it is
   */
  static AreaSetOut ofZone(PatternArea area, InsertSurroundings around) {
    return of(
        area,
        around,
        lines -> new AxisTask(area, lines, List.of(), AxisKeepouts.ofZone(area, around, lines)));
  }

  private interface Tasks {
    AxisTask along(Axis lines);
  }

  private static AreaSetOut of(PatternArea area, InsertSurroundings around, Tasks tasks) {
    PatternLines asked =
        area.pattern().hasLines() ? InsertPattern.of(area) : PatternLines.through(area.listed());
    int blocked =
        (int) asked.inserts().stream().filter(one -> !around.isClear(one.centre())).count();
    return new AreaSetOut(
        area,
        asked,
        axis(tasks.along(Axis.UP), asked),
        axis(tasks.along(Axis.ACROSS), asked),
        blocked);
  }

  private static AxisSetOut axis(AxisTask task, PatternLines asked) {
    Axis lines = task.lines();
    return AxisSetOut.of(
        task, asked.along(lines), task.area().whenBlocked(lines), task.area().wall().tape());
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
  AreaSetOut with(AxisSetOut other) {
    return other.lines() == Axis.UP
        ? new AreaSetOut(area, asked, other, rows, blocked)
        : new AreaSetOut(area, asked, columns, other, blocked);
  }

  /** A plan with the movable members where they were set out. */
  public FramePlan settled(FramePlan plan) {
    return plan.with(columns.settled(), rows.settled());
  }

  /** The same with lines that no place clears all along where they keep most inserts. */
  AreaSetOut keepingMost(InsertSurroundings around) {
    Wall wall = area.wall();
    return switch (wall.inserts().blocked().answer()) {
      case REPORT, DROP, SHIFT -> this;
      case NUDGE, SOLVE ->
          new PartlyBlockedLines(wall.inserts(), around.reach(), around, wall.tape()).of(this);
    };
  }

  /** What is to be told of the members alone, where inserts then find their places one by one. */
  List<PatternOutcome.OfAxis> membersTold() {
    return List.of(columns.membersTold(), rows.membersTold());
  }

  /** What is to be told of it. */
  PatternOutcome told() {
    return new PatternOutcome(
        area.name(),
        area.pattern(),
        List.of(columns.told(area.pattern()), rows.told(area.pattern())),
        List.of(),
        asked.cells().size(),
        blocked);
  }
}
