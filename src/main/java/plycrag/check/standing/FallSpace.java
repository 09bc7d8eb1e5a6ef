package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.Ground;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.SupportPart;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;
import plycrag.wall.room.RoomPlane;
import plycrag.wall.room.Supports;

/** Nothing hard lies where people fall, as far as the room is told. See {@link FallZone}. */
public final class FallSpace implements Rule {
  /** Walls that are turned further away from a side of the room do not face it. */
  private static final double FACING = 0.2;

  private static final String SOURCE = " (EN 12572-2:2017 Table 2)";

  @Override
  public String name() {
    return "fall-space";
  }

  @Override
  public String promise() {
    return "The floor in front of the wall is clear as far as people fall, and rails lie under"
        + " mats.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (int number = 0; number < layout.runs().size(); number++) {
      List<FacetLayout> run = layout.runs().get(number);
      FallZone zone = FallZone.of(layout, run.stream().map(FacetLayout::facet).toList());
      height(layout, zone, findings);
      ends(layout, zone, run, findings);
      obstacles(layout, zone, run.get(0), findings);
      mats(layout, zone, findings);
      sides(layout, number, zone, findings);
      support(layout, number, zone, findings);
    }
    inserts(layout, findings);
    return findings.stream().distinct().toList();
  }

  private void height(Layout layout, FallZone zone, List<Finding> findings) {
    if (zone.top() > FallZone.HIGH + Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(name(), Severity.WARNING)
              .finding(
                  "",
                  "",
                  new Measure(FallZone.HIGH - zone.top(), 0),
                  "the climbing face ends "
                      + tape.text(zone.top())
                      + " above the floor, higher than "
                      + tape.text(FallZone.HIGH),
                  "make it lower, or ask a maker of mats and your local standard what such a fall"
                      + " needs"));
    }
  }

  /** Whatever ends the room in front of a run, seen square to it. */
  private void ends(Layout layout, FallZone zone, List<FacetLayout> run, List<Finding> findings) {
    FacetLayout lowest = run.get(0);
    Room.Sides sides = layout.wall().room().sides();
    double width = layout.wall().frontWidth();
    List<Double> nearest = new ArrayList<>();
    sides
        .front()
        .flatMap(front -> ahead(lowest, new Vector3(0, 1, 0), front))
        .ifPresent(nearest::add);
    sides
        .left()
        .flatMap(left -> ahead(lowest, new Vector3(-1, 0, 0), left))
        .ifPresent(nearest::add);
    sides
        .right()
        .flatMap(right -> ahead(lowest, new Vector3(1, 0, 0), width + right))
        .ifPresent(nearest::add);
    nearest.stream()
        .min(Double::compare)
        .filter(end -> end < zone.end() - Tolerance.TOUCH)
        .ifPresent(
            end ->
                findings.add(
                    tooShort(
                        layout.wall().tape(),
                        "the room ends",
                        end - zone.outermost(),
                        zone,
                        "lean the wall out less ([[facet]] angle) or make it lower ("
                            + run.get(run.size() - 1).facet().lengthKey()
                            + ")")));
  }

  /**
   * How far out from a run's foot a side of the room is, at the end that is nearer; empty where the
   * run does not face it.
   *
   * @param way square to that side, out of the room
   * @param far how far the side is that way from the room's origin, mm
   */
  private static Optional<Double> ahead(FacetLayout lowest, Vector3 way, double far) {
    FloorAxes axes = lowest.facet().plane().floorAxes();
    Vector3 foot = axes.toRoom(new Vector3(0, 0, 0));
    Vector3 out = axes.toRoom(new Vector3(0, 1, 0)).minus(foot);
    double facing = out.dot(way);
    Vector3 other = axes.toRoom(new Vector3(lowest.facet().width(), 0, 0));
    double nearer = Math.max(foot.dot(way), other.dot(way));
    return facing < FACING ? Optional.empty() : Optional.of((far - nearer) / facing);
  }

  private Finding tooShort(Tape tape, String what, double found, FallZone zone, String suggestion) {
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "",
            "",
            new Measure(found, zone.clear()),
            what
                + " "
                + tape.text(Math.max(0, found))
                + " in front of the wall's outermost edge; "
                + tape.text(zone.clear())
                + " must be clear"
                + SOURCE,
            suggestion);
  }

  private void obstacles(Layout layout, FallZone zone, FacetLayout lowest, List<Finding> findings) {
    FloorAxes axes = lowest.facet().plane().floorAxes();
    double width = lowest.facet().width();
    for (Obstacle obstacle : layout.wall().room().obstacles()) {
      Solid body = Boxes.of(obstacle).mapped(axes::fromRoom);
      Solid space =
          Boxes.between(
              List.of(
                  new Vector3(0, zone.foot(), 0),
                  new Vector3(width, zone.foot(), 0),
                  new Vector3(width, zone.end(), 0),
                  new Vector3(0, zone.end(), 0)),
              0,
              zone.top());
      if (body.overlapsByMoreThan(Tolerance.TOUCH, space)) {
        double nearest =
            body.near().stream().mapToDouble(Vector3::y).min().orElse(0) - zone.outermost();
        findings.add(
            tooShort(
                layout.wall().tape(),
                obstacle.name() + " stands",
                nearest,
                zone,
                "take " + obstacle.name() + " away or move the wall"));
      }
    }
  }

  private void mats(Layout layout, FallZone zone, List<Finding> findings) {
    Room.Mat mat = layout.wall().room().mat();
    Optional<Double> front = mat.thickness().flatMap(thickness -> mat.front());
    if (front.isPresent() && front.get() < zone.clear() - Tolerance.TOUCH) {
      findings.add(
          tooShort(
              layout.wall().tape(),
              "the mats end",
              front.get(),
              zone,
              "lay them further "
                  + Cure.length("[mat] front", zone.clear(), layout.wall().tape()).words()));
    }
  }

  /** Mats reach past an end of the wall where nothing stands beside it (common practice). */
  private void sides(Layout layout, int number, FallZone zone, List<Finding> findings) {
    Room room = layout.wall().room();
    Optional<Double> side = room.mat().thickness().flatMap(thickness -> room.mat().side());
    if (side.isEmpty()) {
      return;
    }
    if (number == 0) {
      side(layout, "left", side.get(), room.sides().left().orElse(zone.clear()), findings);
    }
    if (number == layout.runs().size() - 1) {
      side(layout, "right", side.get(), room.sides().right().orElse(zone.clear()), findings);
    }
  }

  private void side(Layout layout, String end, double found, double free, List<Finding> findings) {
    double needed = Math.min(free, FallZone.ASIDE);
    if (found < needed - Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      findings.add(
          new WholeWall(name(), Severity.WARNING)
              .finding(
                  "",
                  "",
                  new Measure(found, needed),
                  "the mats end "
                      + tape.text(found)
                      + " beyond the "
                      + end
                      + " end of the wall, where people fall to the side",
                  "let them reach "
                      + tape.text(needed)
                      + " "
                      + Cure.length("[mat] side", needed, tape).words()));
    }
  }

  private void support(Layout layout, int run, FallZone zone, List<Finding> findings) {
    for (PlacedMember placed : layout.standing()) {
      if (placed.run() == run) {
        FloorAxes axes = layout.runs().get(run).get(0).facet().plane().floorAxes();
        Solid body = placed.body().mapped(axes::fromRoom);
        double front = body.near().stream().mapToDouble(Vector3::y).max().orElse(0);
        boolean inFront = front > zone.foot() + Tolerance.TOUCH;
        if (inFront && placed.member().role() == MemberRole.RAIL) {
          rail(layout, placed, findings);
        } else if (inFront && placed.member().role() == MemberRole.POST) {
          findings.add(post(layout, placed, front - zone.foot()));
        }
      }
    }
  }

  private Finding post(Layout layout, PlacedMember placed, double ahead) {
    Tape tape = layout.wall().tape();
    SupportPart part = layout.support().orElseThrow().holding(placed);
    double behind = tape.snapUp(part.asked().behind() + ahead);
    String table = layout.wall().supports().table(part.facets().get(0));
    String whose = Supports.isOwn(table) ? " of facet " + part.facets().get(0) : "";
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "post " + placed.member().mark() + whose + " stands where people fall",
            "set the posts further behind " + Cure.length(table + " behind", behind, tape).words());
  }

  private void rail(Layout layout, PlacedMember placed, List<Finding> findings) {
    double height = placed.member().box().getHeight();
    double thickness = layout.wall().room().mat().thickness().orElse(0.0);
    if (thickness < height - Tolerance.TOUCH) {
      Tape tape = layout.wall().tape();
      String mats = thickness > 0 ? "mats of " + tape.text(thickness) : "no mats that are told";
      findings.add(
          new WholeWall(name(), Severity.ERROR)
              .finding(
                  placed.member().mark(),
                  "",
                  new Measure(thickness, height),
                  "base rail "
                      + placed.member().mark()
                      + " is "
                      + tape.text(height)
                      + " high where people fall, under "
                      + mats,
                  "lay mats that are thicker, and pad the rail under them "
                      + Cure.length("[mat] thickness", tape.snapUp(height), tape).words()));
    }
  }

  private void inserts(Layout layout, List<Finding> findings) {
    double thickness = layout.wall().room().mat().thickness().orElse(0.0);
    RoomPlane floor = Ground.floor(layout);
    int below = 0;
    for (FacetLayout facet : layout.facets()) {
      for (Insert insert : facet.inserts()) {
        Vector3 place = new Vector3(insert.centre().getX(), insert.centre().getY(), 0);
        below += floor.heightOver(facet.facet().plane().toRoom(place)) < thickness ? 1 : 0;
      }
    }
    if (below > 0) {
      findings.add(
          new WholeWall(name(), Severity.NOTE)
              .finding(
                  Count.of(below, "insert")
                      + (below == 1 ? " lies" : " lie")
                      + " below the top of the mats",
                  "raise the wall ([wall] raise), or leave their rows out"));
    }
  }
}
