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
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.RunAtAngle;
import plycrag.wall.Facet;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;

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
    FallZone zone = FallZone.of(layout.wall(), facets);
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
    if (room.ceiling().height().isPresent()) {
      parts.add(named("ceiling", whole, this::ceiling, at -> ceiling(at) + SLAB));
    }
    addSide(parts, "room left", room.sides().left(), area(left() - SLAB, left(), back(), front()));
    addSide(
        parts, "room right", room.sides().right(), area(right(), right() + SLAB, back(), front()));
    addSide(
        parts, "room front", room.sides().front(), area(left(), right(), front(), front() + SLAB));
    layout.wall().support().ifPresent(support -> addBuilding(parts, support));
    room.obstacles().forEach(obstacle -> parts.add(named(obstacle)));
    return parts;
  }

  private double left() {
    return room.sides().left().map(told -> -told).orElse(ground.getMinX());
  }

  private double right() {
    double width = layout.facets().get(0).facet().width();
    return room.sides().right().map(told -> width + told).orElse(ground.getMaxX());
  }

  private double back() {
    return ground.getMinY();
  }

  private double front() {
    return room.sides().front().orElse(ground.getMaxY());
  }

  /** Nothing is higher than where frames stand; there the floor is as high as its higher end. */
  private double floor(Vector3 at) {
    double width = layout.facets().get(0).facet().width();
    double fall = room.floorFall();
    return Math.min(0, fall) * (1 - at.x() / width) - Math.max(0, fall) * at.x() / width;
  }

  private double ceiling(Vector3 at) {
    return room.ceiling()
        .height()
        .map(told -> told + at.y() * Trig.tan(room.ceiling().pitch()))
        .orElse(highest + BEYOND);
  }

  private void addSide(List<Named> parts, String name, Optional<Double> told, List<Vector3> area) {
    told.ifPresent(distance -> parts.add(named(name, area, this::floor, this::ceiling)));
  }

  /** The building's wall behind each run that it holds. */
  private void addBuilding(List<Named> parts, GivenSupport support) {
    if (support.kind() != Kind.FIXED && support.kind() != Kind.HINGED) {
      return;
    }
    for (int run = 0; run < layout.runs().size(); run++) {
      List<FacetLayout> facets = layout.runs().get(run);
      FloorAxes axes = facets.get(0).facet().plane().floorAxes();
      List<FacetLayout> held = support.kind() == Kind.HINGED ? facets.subList(0, 1) : facets;
      double face = hindmost(held, axes) - support.behind();
      Envelope across = new Envelope();
      corners(run).map(axes::fromRoom).forEach(at -> across.expandToInclude(at.x(), 0));
      List<Vector3> area = area(across.getMinX(), across.getMaxX(), face - SLAB, face);
      String name = layout.runs().size() > 1 ? "building " + (run + 1) : "building";
      List<Vector3> stands = area.stream().map(axes::toRoom).toList();
      parts.add(named(name, stands, this::floor, this::ceiling));
    }
  }

  private double hindmost(List<FacetLayout> held, FloorAxes axes) {
    double thickness = layout.wall().sheet().thickness();
    return held.stream()
        .flatMap(
            facet ->
                facet.members().stream()
                    .flatMap(member -> member.body(thickness).far().stream())
                    .map(facet.facet().plane()::toRoom))
        .mapToDouble(corner -> axes.fromRoom(corner).y())
        .min()
        .orElse(0);
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
