package plycrag.check.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Ground;
import plycrag.layout.standing.RunAtAngle;
import plycrag.units.Tape;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;
import plycrag.wall.room.RoomPlane;

/** The wall stands in its room at every angle that it is used at. */
public final class RoomFits implements Rule {
  @Override
  public String name() {
    return "room-fits";
  }

  @Override
  public String promise() {
    return "The wall stands under its ceiling, between its walls and clear of what is told to be"
        + " there.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (int run = 0; run < layout.runs().size(); run++) {
      for (double angle : RunAtAngle.angles(layout, run)) {
        RunAtAngle atAngle = RunAtAngle.of(layout, run, angle);
        ceiling(layout, layout.runs().get(run), atAngle, findings);
        sides(layout, atAngle, findings);
        kneeWall(layout, atAngle, findings);
        floor(layout, atAngle, findings);
        for (Obstacle obstacle : layout.wall().room().obstacles()) {
          obstacle(layout.wall().tape(), atAngle, obstacle, findings);
        }
      }
    }
    return findings.stream().distinct().toList();
  }

  private void ceiling(
      Layout layout, List<FacetLayout> run, RunAtAngle atAngle, List<Finding> findings) {
    Ceiling ceiling = layout.wall().room().ceiling();
    new UnderCeiling(layout, run, "the ceiling", ceiling.plane())
        .judge(atAngle, report(), findings);
    new UnderCeiling(layout, run, "the rafters", ceiling.rafters())
        .judge(atAngle, report(), findings);
  }

  private WholeWall report() {
    return new WholeWall(name(), Severity.ERROR);
  }

  /** A low wall behind is stood before, not in. */
  private void kneeWall(Layout layout, RunAtAngle atAngle, List<Finding> findings) {
    Tape tape = layout.wall().tape();
    layout
        .wall()
        .room()
        .ceiling()
        .kneeWall()
        .ifPresent(
            wall ->
                atAngle.bodies().stream()
                    .min(Comparator.comparingDouble(RoomFits::hindmost))
                    .filter(body -> -hindmost(body) - wall.behind() > Tolerance.TOUCH)
                    .ifPresent(
                        body -> {
                          double deep = -hindmost(body) - wall.behind();
                          findings.add(
                              new WholeWall(name(), Severity.ERROR)
                                  .finding(
                                      body.mark(),
                                      "",
                                      new Measure(-deep, 0),
                                      body.mark()
                                          + " reaches "
                                          + tape.text(tape.snapUp(deep))
                                          + " into the knee wall behind it",
                                      "set the wall further out "
                                          + Cure.length(
                                                  "[room] knee-wall-behind",
                                                  tape.snapUp(wall.behind() + deep),
                                                  tape)
                                              .words()));
                        }));
  }

  private static double hindmost(RunAtAngle.Body body) {
    return corners(body).mapToDouble(Vector3::y).min().orElse(0);
  }

  private static Stream<Vector3> corners(RunAtAngle.Body body) {
    return Stream.concat(body.solid().near().stream(), body.solid().far().stream());
  }

  /** What stands is packed up from a floor that falls; what hangs out over it keeps clear of it. */
  private void floor(Layout layout, RunAtAngle atAngle, List<Finding> findings) {
    if (layout.wall().room().floor().isLevel()) {
      return;
    }
    RoomPlane floor = Ground.of(layout).floor();
    Tape tape = layout.wall().tape();
    atAngle.bodies().stream()
        .min(Comparator.comparingDouble(body -> lowest(body, floor)))
        .filter(body -> lowest(body, floor) < -Tolerance.TOUCH)
        .ifPresent(
            body ->
                findings.add(
                    new WholeWall(name(), Severity.ERROR)
                        .finding(
                            body.mark(),
                            "",
                            new Measure(lowest(body, floor), 0),
                            body.mark()
                                + " reaches "
                                + tape.text(tape.snapUp(-lowest(body, floor)))
                                + " into the floor where that is higher",
                            "raise the wall "
                                + Cure.length(
                                        "[wall] raise",
                                        tape.snapUp(raise(layout) - lowest(body, floor)),
                                        tape)
                                    .words())));
  }

  /** How high the lowest edge of the face is, mm. */
  private static double raise(Layout layout) {
    return layout.facets().get(0).facet().raise();
  }

  private static double lowest(RunAtAngle.Body body, RoomPlane floor) {
    return corners(body).mapToDouble(floor::heightOver).min().orElse(0);
  }

  private void sides(Layout layout, RunAtAngle atAngle, List<Finding> findings) {
    Room.Sides sides = layout.wall().room().sides();
    double width = layout.wall().frontWidth();
    side(layout, atAngle, new Side("left", sides.left(), 0, at -> -at.x()), findings);
    side(layout, atAngle, new Side("right", sides.right(), width, Vector3::x), findings);
    side(layout, atAngle, new Side("front", sides.front(), 0, Vector3::y), findings);
  }

  /**
   * One side of a room.
   *
   * @param name of it and of its key
   * @param told how much room there is, mm
   * @param from where that is counted from, on the way from the room's origin to it, mm
   * @param along how far a place lies that way
   */
  private record Side(
      String name, Optional<Double> told, double from, ToDoubleFunction<Vector3> along) {
    Optional<Beyond> beyond(RunAtAngle atAngle) {
      return told.map(room -> from + room)
          .flatMap(end -> Beyond.furthest(atAngle.bodies(), at -> along.applyAsDouble(at) - end));
    }

    String cure(double by, Tape tape) {
      String less =
          name.equals("front")
              ? "let it lean out less ([[facet]] angle)"
              : "make it narrower ([[facet]] width)";
      double needed = tape.snapUp(told.orElseThrow() + by);
      return less
          + ", or move the wall so that it has "
          + tape.text(needed)
          + " there "
          + Cure.length("[room] " + name, needed, tape).words();
    }
  }

  private void side(Layout layout, RunAtAngle atAngle, Side side, List<Finding> findings) {
    Tape tape = layout.wall().tape();
    side.beyond(atAngle)
        .ifPresent(
            beyond ->
                findings.add(
                    new WholeWall(name(), Severity.ERROR)
                        .finding(
                            beyond.body().mark(),
                            "",
                            new Measure(-beyond.by(), 0),
                            beyond.body().owner()
                                + " reaches "
                                + tape.text(tape.snapUp(beyond.by()))
                                + " through what ends the room on the "
                                + side.name(),
                            side.cure(beyond.by(), tape))));
  }

  private void obstacle(Tape tape, RunAtAngle atAngle, Obstacle obstacle, List<Finding> findings) {
    Solid box = Boxes.of(obstacle);
    atAngle.bodies().stream()
        .filter(body -> body.overlap(box) > Tolerance.TOUCH)
        .max(Comparator.comparingDouble(body -> body.overlap(box)))
        .ifPresent(
            body -> {
              double depth = body.overlap(box);
              findings.add(
                  new WholeWall(name(), Severity.ERROR)
                      .finding(
                          body.mark(),
                          obstacle.name(),
                          new Measure(-depth, 0),
                          body.mark() + " overlaps " + obstacle.name() + " by " + tape.size(depth),
                          "move the wall, or cut it out round " + obstacle.name()));
            });
  }
}
