package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Anchor.Into;
import plycrag.wall.Wall;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.Room.Joists;
import plycrag.wall.room.Room.Run;

/**
 * Where a run's support is fixed to the building: ledgers in its studs, its masonry or its joists,
 * and what stands on the floor.
 */
final class Anchorage {
  private final Wall wall;
  private final GivenSupport asked;
  private final RunSite run;

  /**
   * @param wall what is held
   * @param run the part of it
   */
  Anchorage(Wall wall, RunSite run) {
    this.wall = wall;
    this.asked = run.asked();
    this.run = run;
  }

  /**
   * The anchors, ledger by ledger as they were set, then those in the floor.
   *
   * @param before how many there are already
   */
  List<Anchor> anchors(List<PlacedMember> members, int before) {
    List<Anchor> anchors = new ArrayList<>();
    for (PlacedMember placed : members) {
      for (Vector3 place : places(placed)) {
        String mark = "AN" + (before + anchors.size() + 1);
        anchors.add(new Anchor(mark, placed.member().mark(), into(placed), place));
      }
    }
    if (!asked.hasPosts()) {
      PlatePlaces middles = new PlatePlaces(asked.fixing().spacing(), wall.tape());
      for (PlacedMember plate : run.frames().feet()) {
        for (double along :
            middles.of(plate.member().box(), run.frames().uprights(plate.member()))) {
          String mark = "AN" + (before + anchors.size() + 1);
          double middle = plate.member().depth() / 2;
          double low = plate.member().box().getMinY();
          Vector3 place = plate.plane().toRoom(new Vector3(along, low, middle));
          anchors.add(new Anchor(mark, plate.member().mark(), Into.FLOOR, place));
        }
      }
    }
    return anchors;
  }

  private Into into(PlacedMember placed) {
    if (placed.member().role() != MemberRole.LEDGER) {
      return Into.FLOOR;
    }
    if (asked.kind() == Kind.HUNG) {
      return Into.JOIST;
    }
    return Into.of(asked.fixing().base());
  }

  private List<Vector3> places(PlacedMember placed) {
    Envelope box = placed.member().box();
    if (placed.member().role() == MemberRole.LEDGER) {
      return asked.kind() == Kind.HUNG ? underJoists(placed, box) : onBuilding(placed, box);
    }
    boolean onFloor =
        placed.member().role() == MemberRole.BRACE && Tolerance.atMost(box.getMinY(), 0);
    return onFloor && !asked.hasPosts()
        ? List.of(
            placed
                .plane()
                .toRoom(
                    new Vector3(
                        box.getMinX() + wall.frame().depth() / 2, 0, placed.member().depth() / 2)))
        : List.of();
  }

  private List<Vector3> onBuilding(PlacedMember placed, Envelope box) {
    double height = box.centre().y;
    double depth = placed.member().depth();
    List<Double> across =
        asked.fixing().base().filter(base -> base == Base.STUDS).isPresent()
            ? onGrid(run.fromLeft(asked.fixing().firstStud()), asked.fixing().studSpacing(), box)
            : evenly(box);
    return across.stream().map(x -> placed.plane().toRoom(new Vector3(x, height, depth))).toList();
  }

  private List<Vector3> underJoists(PlacedMember placed, Envelope box) {
    Joists joists = wall.room().ceiling().joists();
    double middle = placed.member().depth() / 2;
    if (joists.run() == Run.OUT) {
      return onGrid(run.fromLeft(joists.first()), joists.spacing(), box).stream()
          .map(x -> placed.plane().toRoom(new Vector3(x, box.getMaxY(), middle)))
          .toList();
    }
    double half = joists.section().map(section -> section.breadth() / 2).orElse(0.0);
    double y = placed.plane().out() - middle;
    double steps = Math.round((y - joists.first()) / joists.spacing());
    boolean under = Math.abs(joists.first() + steps * joists.spacing() - y) <= half;
    return under
        ? evenly(box).stream()
            .map(x -> placed.plane().toRoom(new Vector3(x, box.getMaxY(), middle)))
            .toList()
        : List.of();
  }

  /** Every place of a grid that lies on a ledger. */
  private static List<Double> onGrid(double first, double spacing, Envelope box) {
    List<Double> places = new ArrayList<>();
    double from =
        first + Math.ceil((box.getMinX() + Anchor.FROM_END / 2 - first) / spacing) * spacing;
    for (double at = from; at <= box.getMaxX() - Anchor.FROM_END / 2; at += spacing) {
      places.add(at);
    }
    return places;
  }

  /** Evenly, no further apart than may be. */
  private List<Double> evenly(Envelope box) {
    double length = box.getWidth() - 2 * Anchor.FROM_END;
    int gaps = Math.max(1, (int) Tolerance.wholeUp(length / asked.fixing().spacing()));
    List<Double> places = new ArrayList<>();
    for (int at = 0; at <= gaps; at++) {
      places.add(wall.tape().snap(box.getMinX() + Anchor.FROM_END + length * at / gaps));
    }
    return places;
  }
}
