package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Hulls;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.standing.Mass;
import plycrag.layout.structure.ClimberPlace;
import plycrag.layout.structure.ClimberPlace.Pull;
import plycrag.layout.structure.ClimberPlaces;
import plycrag.layout.structure.SelfWeight;
import plycrag.wall.room.GivenStructure;
import plycrag.wall.room.RoomPlane;

/**
 * Whether a wall that nothing is anchored to topples or slides as a rigid body, EN 1990, 6.4.1 and
 * Table A1.2(A) with its recommended values: 0.9 of its weight, without holds, against 1.5 times
 * one climber who moves at the tip of a hold at any corner of the face, down and level at once. It
 * topples over each edge of what it stands on: M_dst/M_stb. It slides: H/(μ N). kN, kNm.
 */
final class Toppling {
  private static final double HOLDING = 0.9;
  private static final double UPSETTING = 1.5;
  private static final double KILO = 1000;
  private static final double RESTS = 2;

  private final Layout layout;
  private final GivenStructure given;
  private final double weight;
  private final double climber;

  Toppling(Layout layout) {
    this.layout = layout;
    this.given = layout.wall().structure();
    this.weight =
        HOLDING * Mass.of(layout).kilograms() * (1 + SelfWeight.HARDWARE) * SelfWeight.GRAVITY;
    this.climber = UPSETTING * given.climbing().weight() * given.climbing().factor();
  }

  List<StructureLine> lines() {
    if (!layout.support().orElseThrow().anchors().isEmpty()) {
      return List.of();
    }
    List<Coordinate> base = base();
    List<StructureLine> lines = new ArrayList<>();
    for (int i = 0; i < base.size(); i++) {
      toppling(base.get(i), base.get((i + 1) % base.size()), lines);
    }
    if (!base.isEmpty()) {
      lines.add(sliding());
    }
    return lines;
  }

  /** The corners of what it stands on, round it. */
  private List<Coordinate> base() {
    RoomPlane floor = layout.wall().floor();
    List<Coordinate> feet =
        layout.standing().stream()
            .flatMap(one -> Stream.concat(one.body().near().stream(), one.body().far().stream()))
            .filter(corner -> floor.heightOver(corner) < RESTS)
            .map(corner -> new Coordinate(corner.x(), corner.y()))
            .toList();
    Coordinate[] ring = Hulls.hull(feet).getCoordinates();
    return ring.length < 4 ? List.of() : List.of(ring).subList(0, ring.length - 1);
  }

  private void toppling(Coordinate from, Coordinate to, List<StructureLine> lines) {
    Vector3 along = new Vector3(to.x - from.x, to.y - from.y, 0);
    if (!Tolerance.isMore(along.length(), SHORT)) {
      return;
    }
    Vector3 edge = new Vector3(from.x, from.y, 0);
    Vector3 centre = Mass.of(layout).centre();
    Vector3 square = new Vector3(-along.y(), along.x(), 0).unit();
    Vector3 outward = square.dot(centre.minus(edge)) > 0 ? square.times(-1) : square;
    double holds = weight * -outward.dot(centre.minus(edge));
    String worst = "";
    double upsets = 0;
    for (ClimberPlace place : ClimberPlaces.corners(layout, given.climbing().reach())) {
      for (Pull pull : Pull.values()) {
        Vector3 force = place.force(pull, climber, given.climbing().sideways());
        Vector3 tip = place.tip();
        double lever = outward.dot(new Vector3(tip.x(), tip.y(), 0).minus(edge));
        double moment = -force.z() * lever + outward.dot(force) * tip.z();
        if (moment > upsets) {
          upsets = moment;
          worst = ", climber at " + place.name() + " " + pull.words();
        }
      }
    }
    lines.add(
        StructureLine.of(
            "wall",
            "topples " + way(outward),
            "EN 1990, (6.7), Table A1.2(A)",
            "0.9 G + 1.5 Q" + worst,
            upsets / KILO / KILO,
            holds / KILO / KILO,
            "kNm",
            "its own weight"));
  }

  /** An edge of what it stands on that is shorter is a corner of one member, mm. */
  private static final double SHORT = 200;

  private static String way(Vector3 outward) {
    if (Math.abs(outward.y()) >= Math.abs(outward.x())) {
      return outward.y() > 0 ? "forward" : "backward";
    }
    return outward.x() > 0 ? "to the right" : "to the left";
  }

  private StructureLine sliding() {
    double level = climber * given.climbing().sideways();
    double holds = given.friction() * (weight + climber);
    return StructureLine.of(
        "wall",
        "slides",
        "EN 1990, (6.7), Table A1.2(A)",
        "0.9 G + 1.5 Q, climber pulls level as well",
        level / KILO,
        holds / KILO,
        "kN",
        "[structure] friction");
  }
}
