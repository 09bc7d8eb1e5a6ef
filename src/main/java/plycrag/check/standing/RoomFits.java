package plycrag.check.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.standing.RunAtAngle;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;

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
    Room.Ceiling ceiling = layout.wall().room().ceiling();
    if (ceiling.height().isEmpty()) {
      return;
    }
    double rise = Trig.tan(ceiling.pitch());
    double over =
        atAngle
            .corners()
            .mapToDouble(corner -> corner.z() - ceiling.height().get() - corner.y() * rise)
            .max()
            .orElse(0);
    if (over > Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      double gain = Trig.cos(top.angle()) - rise * Trig.sin(top.angle());
      double fitting = tape.snapDown(top.facet().length() - over / gain);
      String shorter =
          gain > 0 && fitting > 0
              ? "facet "
                  + top.facet().name()
                  + " fits with a length of "
                  + tape.text(fitting)
                  + " up the slope ([[facet]] length)"
              : "lower the wall";
      findings.add(
          new WholeWall(name(), Severity.ERROR)
              .finding(
                  "",
                  "",
                  new Measure(-over, 0),
                  "the wall is "
                      + tape.text(tape.snapUp(over))
                      + " too high for the ceiling at "
                      + Decimal.of(top.angle(), 2)
                      + "°",
                  shorter));
    }
  }

  private void sides(Layout layout, RunAtAngle atAngle, List<Finding> findings) {
    Room.Sides sides = layout.wall().room().sides();
    double width = layout.runs().get(0).get(0).facet().width();
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
        .filter(body -> body.solid().overlapsByMoreThan(Tolerance.TOUCH, Boxes.of(obstacle)))
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
