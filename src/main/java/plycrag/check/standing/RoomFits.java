package plycrag.check.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.standing.Ground;
import plycrag.layout.standing.RunAtAngle;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
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
        Facet top = layout.runs().get(run).get(layout.runs().get(run).size() - 1).facet();
        ceiling(layout, atAngle, leaning(atAngle, top, angle), findings);
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

  /** A facet and how far it leans. */
  private record Leaning(Facet facet, double angle) {}

  private static Leaning leaning(RunAtAngle atAngle, Facet top, double angle) {
    return new Leaning(top, atAngle.moving().isEmpty() ? top.angle() : angle);
  }

  private void ceiling(Layout layout, RunAtAngle atAngle, Leaning top, List<Finding> findings) {
    Ceiling ceiling = layout.wall().room().ceiling();
    ceiling
        .plane()
        .ifPresent(plane -> under(layout, atAngle, top, new Above("the ceiling", plane), findings));
    ceiling
        .rafters()
        .ifPresent(plane -> under(layout, atAngle, top, new Above("the rafters", plane), findings));
  }

  /** What ends the room above. */
  private record Above(String name, RoomPlane plane) {
    /** The place that reaches highest over it, if one does. */
    Optional<Vector3> pierced(Stream<RunAtAngle.Body> bodies) {
      return bodies
          .flatMap(RoomFits::corners)
          .max(Comparator.comparingDouble(plane::heightOver))
          .filter(corner -> plane.heightOver(corner) > Tolerance.TOUCH);
    }

    double over(RunAtAngle.Body body) {
      return corners(body).mapToDouble(plane::heightOver).max().orElse(0);
    }
  }

  private void under(
      Layout layout, RunAtAngle atAngle, Leaning top, Above above, List<Finding> findings) {
    Tape tape = layout.wall().tape();
    Set<String> support =
        layout.standing().stream().map(one -> one.member().mark()).collect(Collectors.toSet());
    above
        .pierced(atAngle.bodies().stream().filter(body -> !support.contains(body.mark())))
        .ifPresent(corner -> findings.add(tooHigh(tape, top, above, corner)));
    atAngle.bodies().stream()
        .filter(body -> support.contains(body.mark()))
        .max(Comparator.comparingDouble(above::over))
        .flatMap(
            body ->
                above
                    .pierced(Stream.of(body))
                    .map(corner -> standsTooHigh(tape, body, above, corner)))
        .ifPresent(findings::add);
  }

  private Finding tooHigh(Tape tape, Leaning top, Above above, Vector3 corner) {
    double over = above.plane().heightOver(corner);
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "",
            "",
            new Measure(-over, 0),
            "the wall is "
                + tape.text(tape.snapUp(over))
                + " too high for "
                + above.name()
                + " at "
                + Decimal.of(top.angle(), 2)
                + "°"
                + (above.plane().isLevel() ? "" : ", " + place(tape, corner)),
            shorter(tape, top, above.plane(), over));
  }

  private Finding standsTooHigh(Tape tape, RunAtAngle.Body body, Above above, Vector3 corner) {
    double over = above.plane().heightOver(corner);
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            body.mark(),
            "",
            new Measure(-over, 0),
            body.mark()
                + " of the support reaches "
                + tape.text(tape.snapUp(over))
                + " through "
                + above.name()
                + ", "
                + place(tape, corner),
            "let the support stand nearer ([support] behind), hold the wall another way ([support]"
                + " kind), or make it lower");
  }

  /** Where a place is, seen from above. */
  private static String place(Tape tape, Vector3 at) {
    String out = tape.text(Math.abs(tape.snap(at.y())));
    return tape.text(tape.snap(at.x()))
        + " from the wall's left and "
        + out
        + (at.y() < 0 ? " behind its foot" : " out from its foot");
  }

  /** How long the highest facet may be so that it ends below. */
  private static String shorter(Tape tape, Leaning top, RoomPlane above, double over) {
    FacetPlane plane = top.facet().plane();
    Vector3 foot = plane.toRoom(new Vector3(0, 0, 0));
    Vector3 further = plane.toRoom(new Vector3(0, 1, 0));
    double gain = further.z() - foot.z() - above.rise(foot, further);
    double fitting = tape.snapDown(top.facet().length() - over / gain);
    return gain > 0 && fitting > 0
        ? "facet "
            + top.facet().name()
            + " fits with a length of "
            + tape.text(fitting)
            + " up the slope ([[facet]] length)"
        : "lower the wall";
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
                                      "set the wall further out ([room] knee-wall-behind)"));
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
                            "raise the wall ([wall] raise)")));
  }

  private static double lowest(RunAtAngle.Body body, RoomPlane floor) {
    return corners(body).mapToDouble(floor::heightOver).min().orElse(0);
  }

  private void sides(Layout layout, RunAtAngle atAngle, List<Finding> findings) {
    Room.Sides sides = layout.wall().room().sides();
    double width = layout.wall().frontWidth();
    double left = atAngle.corners().mapToDouble(Vector3::x).min().orElse(0);
    double right = atAngle.corners().mapToDouble(Vector3::x).max().orElse(0);
    side(layout, "left", sides.left().map(room -> room + left), findings);
    side(layout, "right", sides.right().map(room -> room + width - right), findings);
    double front = atAngle.corners().mapToDouble(Vector3::y).max().orElse(0);
    side(layout, "front", sides.front().map(room -> room - front), findings);
  }

  private void side(Layout layout, String side, Optional<Double> room, List<Finding> findings) {
    if (room.isPresent() && room.get() < -Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(name(), Severity.ERROR)
              .finding(
                  "",
                  "",
                  new Measure(room.get(), 0),
                  "the wall reaches "
                      + tape.text(tape.snapUp(-room.get()))
                      + " through what ends the room on its "
                      + side,
                  "make it narrower or move it"));
    }
  }

  private void obstacle(Tape tape, RunAtAngle atAngle, Obstacle obstacle, List<Finding> findings) {
    atAngle.bodies().stream()
        .filter(body -> body.solid().overlap(Boxes.of(obstacle)) > Tolerance.TOUCH)
        .max(Comparator.comparingDouble(body -> body.solid().overlap(Boxes.of(obstacle))))
        .ifPresent(
            body -> {
              double depth = body.solid().overlap(Boxes.of(obstacle));
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
