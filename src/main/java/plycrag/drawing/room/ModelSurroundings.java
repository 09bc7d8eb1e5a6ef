package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.geometry.Surface;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.Ground;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.support.SupportPart;
import plycrag.layout.support.WallSupport;
import plycrag.wall.Facet;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;
import plycrag.wall.room.RoomPlane;

/**
 * What a model shows around the wall: mats, and of the room the floor and what is told, as slabs.
 * Where nothing is told of a side, floor and ceiling end beyond the last thing there.
 */
final class ModelSurroundings {
  /** How thick the room's slabs are shown (a choice), mm. */
  private static final double SLAB = 50;

  /** How far they go beyond what stands there where no end is told (a choice), mm. */
  private static final double BEYOND = 500;

  private final Layout layout;
  private final Room room;
  private final List<Polygon> mats;
  private final RoomPlane floor;
  private final Envelope ground = new Envelope();
  private double highest;

  /**
   * A part of the room.
   *
   * @param name of it
   * @param surface of its body
   */
  record Named(String name, Surface surface) {}

  ModelSurroundings(Layout layout) {
    this.layout = layout;
    this.room = layout.wall().room();
    this.floor = Ground.of(layout).floor();
    this.mats = new PlanMats(layout).areas();
    for (int run = 0; run < layout.runs().size(); run++) {
      corners(run).forEach(this::include);
      clear(run).forEach(this::include);
    }
    for (Polygon mat : mats) {
      Stream.of(mat.getCoordinates())
          .forEach(corner -> ground.expandToInclude(corner.x, -corner.y));
    }
    ground.expandBy(BEYOND);
  }

  private void include(Vector3 corner) {
    ground.expandToInclude(corner.x(), corner.y());
    highest = Math.max(highest, corner.z());
  }

  /** Those of a run's bodies, at the angle that it is laid out at. */
  private Stream<Vector3> corners(int run) {
    List<FacetLayout> facets = layout.runs().get(run);
    double angle = facets.get(Math.min(1, facets.size() - 1)).facet().angle();
    return RunAtAngle.of(layout, run, angle).corners();
  }

  /** Where the space to fall into ends. */
  private Stream<Vector3> clear(int run) {
    List<Facet> facets = layout.runs().get(run).stream().map(FacetLayout::facet).toList();
    FallZone zone = FallZone.of(layout, facets);
    FloorAxes axes = facets.get(0).plane().floorAxes();
    return Stream.of(0.0, facets.get(0).width())
        .map(x -> axes.toRoom(new Vector3(x, zone.end(), 0)));
  }

  /** The mats of all runs. */
  List<Surface> mats() {
    double thickness = room.mat().thickness().orElse(0.0);
    return mats.stream()
        .map(area -> Surface.between(area, 0, area, thickness))
        .map(mat -> mat.mapped(at -> new Vector3(at.x(), -at.y(), at.z())))
        .toList();
  }

  /** The floor, the ceiling, what ends the room, the building behind, and what stands there. */
  List<Named> room() {
    List<Named> parts = new ArrayList<>();
    List<Vector3> whole = area(left(), right(), back(), front());
    parts.add(named("floor", whole, at -> floor(at) - SLAB, this::floor));
    addAbove(parts, whole);
    addSide(parts, "room left", room.sides().left(), area(left() - SLAB, left(), back(), front()));
    addSide(
        parts, "room right", room.sides().right(), area(right(), right() + SLAB, back(), front()));
    addSide(
        parts, "room front", room.sides().front(), area(left(), right(), front(), front() + SLAB));
    addBuilding(parts);
    room.obstacles().forEach(obstacle -> parts.add(named(obstacle)));
    return parts;
  }

  private double left() {
    return room.sides().left().map(told -> -told).orElse(ground.getMinX());
  }

  private double right() {
    double width = layout.wall().frontWidth();
    return room.sides().right().map(told -> width + told).orElse(ground.getMaxX());
  }

  private double back() {
    return room.ceiling().kneeWall().map(wall -> -wall.behind()).orElse(ground.getMinY());
  }

  private double front() {
    return room.sides().front().orElse(ground.getMaxY());
  }

  /** Nothing is higher than where frames stand. */
  private double floor(Vector3 at) {
    return floor.at(at.x(), at.y());
  }

  private double ceiling(Vector3 at) {
    return room.ceiling().at(at).orElse(highest + BEYOND);
  }

  /** The ceiling and the rafters, each where it is the lower one, and the wall these stand on. */
  private void addAbove(List<Named> parts, List<Vector3> whole) {
    Optional<RoomPlane> ceiling = room.ceiling().plane();
    Optional<RoomPlane> rafters = room.ceiling().rafters();
    addAbove(parts, "ceiling", whole, ceiling, rafters);
    addAbove(parts, "rafters", whole, rafters, ceiling);
    room.ceiling()
        .kneeWall()
        .ifPresent(
            wall ->
                parts.add(
                    named(
                        "knee wall",
                        area(left(), right(), back() - SLAB, back()),
                        this::floor,
                        at -> wall.height())));
  }

  private static void addAbove(
      List<Named> parts,
      String name,
      List<Vector3> whole,
      Optional<RoomPlane> plane,
      Optional<RoomPlane> other) {
    if (plane.isEmpty()) {
      return;
    }
    RoomPlane own = plane.get();
    List<Vector3> area = other.map(one -> lower(whole, own, one)).orElse(whole);
    if (area.size() > 2) {
      parts.add(
          named(name, area, at -> own.at(at.x(), at.y()), at -> own.at(at.x(), at.y()) + SLAB));
    }
  }

  /** What is left of an area where one plane lies below another. */
  private static List<Vector3> lower(List<Vector3> area, RoomPlane one, RoomPlane other) {
    List<Vector3> left = new ArrayList<>();
    for (int at = 0; at < area.size(); at++) {
      Vector3 from = area.get(at);
      Vector3 to = area.get((at + 1) % area.size());
      double before = under(from, one, other);
      double after = under(to, one, other);
      if (before > Tolerance.TOUCH) {
        left.add(from);
      }
      if (before > Tolerance.TOUCH != after > Tolerance.TOUCH) {
        left.add(from.plus(to.minus(from).times(before / (before - after))));
      }
    }
    return left;
  }

  private static double under(Vector3 at, RoomPlane one, RoomPlane other) {
    return other.at(at.x(), at.y()) - one.at(at.x(), at.y());
  }

  private void addSide(List<Named> parts, String name, Optional<Double> told, List<Vector3> area) {
    told.ifPresent(distance -> parts.add(named(name, area, this::floor, this::ceiling)));
  }

  /** The building's walls that hold the wall. */
  private void addBuilding(List<Named> parts) {
    List<SupportPart> held =
        layout.support().map(WallSupport::parts).orElse(List.of()).stream()
            .filter(part -> part.buildingFace().isPresent())
            .toList();
    for (int number = 0; number < held.size(); number++) {
      SupportPart part = held.get(number);
      double face = part.buildingFace().orElseThrow();
      Envelope across = new Envelope();
      corners(part.run())
          .map(part.axes()::fromRoom)
          .forEach(at -> across.expandToInclude(at.x(), 0));
      List<Vector3> area = area(across.getMinX(), across.getMaxX(), face - SLAB, face);
      String name = held.size() > 1 ? "building " + (number + 1) : "building";
      List<Vector3> stands = area.stream().map(part.axes()::toRoom).toList();
      parts.add(named(name, stands, this::floor, this::ceiling));
    }
  }

  private static Named named(Obstacle obstacle) {
    double left = obstacle.corner().left();
    double out = obstacle.corner().out();
    double low = obstacle.corner().low();
    return named(
        obstacle.name(),
        area(left, left + obstacle.size().width(), out, out + obstacle.size().depth()),
        at -> low,
        at -> low + obstacle.size().height());
  }

  /** What stands on an area of the floor, from one height of each corner to another. */
  private static Named named(
      String name,
      List<Vector3> area,
      ToDoubleFunction<Vector3> low,
      ToDoubleFunction<Vector3> high) {
    return new Named(name, Surface.of(new Solid(at(area, low), at(area, high))));
  }

  private static List<Vector3> at(List<Vector3> area, ToDoubleFunction<Vector3> height) {
    return area.stream()
        .map(corner -> new Vector3(corner.x(), corner.y(), height.applyAsDouble(corner)))
        .toList();
  }

  private static List<Vector3> area(double left, double right, double back, double front) {
    return List.of(
        new Vector3(left, back, 0),
        new Vector3(right, back, 0),
        new Vector3(right, front, 0),
        new Vector3(left, front, 0));
  }
}
