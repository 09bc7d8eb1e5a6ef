package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.support.SupportPart;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.RoomAround;
import plycrag.solve.fixing.TimberBody;
import plycrag.wall.Wall;

/**
 * What is taken in the room around the frame: by its timber, its brackets, the sheets, the inserts
 * with the bolts in them, the floor, and the building that a frame is held by.
 */
final class GussetRoom {
  private static final double FAR = 1e5;

  private final List<FacetLayout> facets;
  private final SpatialIndex<TimberBody> timber;
  private final SpatialIndex<Solid> bodies;
  private final SpatialIndex<Solid> inserts;
  private final FastenerRoom fasteners;
  private final List<Solid> building = new ArrayList<>();

  /**
   * Gathers what is there.
   *
   * @param steel of brackets, and gussets that are there
   * @param fasteners what gussets' screws keep off
   */
  GussetRoom(
      Wall wall,
      List<FacetLayout> facets,
      Optional<WallSupport> support,
      List<TimberBody> members,
      Stream<Solid> steel,
      FastenerRoom fasteners) {
    this.facets = facets;
    this.fasteners = fasteners;
    this.timber = new SpatialIndex<>(members, TimberBody::box);
    this.bodies =
        new SpatialIndex<>(
            Stream.concat(facets.stream().flatMap(facet -> sheets(facet, wall)), steel).toList(),
            Solid::elevation);
    this.inserts =
        new SpatialIndex<>(
            facets.stream().flatMap(facet -> inserts(facet, wall)).toList(), Solid::elevation);
    building.add(slab(new Span(-FAR, FAR), new Span(-FAR, 0)));
    building.addAll(walls(support));
  }

  /** Where the run stands to which members belong; the first one for those of a support alone. */
  FloorAxes floorAxes(Set<String> marks) {
    return facets.stream()
        .filter(facet -> facet.members().stream().anyMatch(one -> marks.contains(one.mark())))
        .findFirst()
        .orElse(facets.get(0))
        .facet()
        .plane()
        .floorAxes();
  }

  /**
   * What is around a gusset over some members. Those of a support alone are screwed together on the
   * floor, before anything else is near.
   */
  RoomAround without(List<TimberBody> members) {
    boolean isMadeApart = members.stream().noneMatch(TimberBody::sheeted);
    return new RoomAround(
        box -> Stream.concat(taken(box, members).stream(), inserts.near(box, 0).stream()).toList(),
        box -> isMadeApart ? List.of() : taken(box, members),
        fasteners::near);
  }

  private List<Solid> taken(Envelope near, List<TimberBody> without) {
    List<Solid> taken = new ArrayList<>(building);
    timber.near(near, 0).stream()
        .filter(body -> !without.contains(body))
        .map(TimberBody::solid)
        .forEach(taken::add);
    taken.addAll(bodies.near(near, 0));
    return taken;
  }

  private static Stream<Solid> sheets(FacetLayout facet, Wall wall) {
    double thickness = wall.sheet().thickness();
    return facet.pieces().stream()
        .map(piece -> Solid.joining(piece.outline(), 0, piece.back(), thickness))
        .map(body -> body.mapped(facet.facet().plane()::toRoom));
  }

  /** The zones of a facet's inserts. */
  private static Stream<Solid> inserts(FacetLayout facet, Wall wall) {
    double thickness = wall.sheet().thickness();
    return facet.inserts().stream()
        .map(insert -> zone(insert.centre(), thickness, wall))
        .map(body -> body.mapped(facet.facet().plane()::toRoom));
  }

  /** Square, around what timber keeps out of behind an insert. */
  private static Solid zone(Point centre, double thickness, Wall wall) {
    Envelope box = new Envelope(centre.getCoordinate());
    box.expandBy(wall.insertToTimber());
    Polygon area = Shapes.rectangle(box);
    return Solid.between(area, thickness, area, thickness + wall.inserts().bolt().reach());
  }

  /** The building's walls that hold the wall. */
  private static List<Solid> walls(Optional<WallSupport> support) {
    List<Solid> walls = new ArrayList<>();
    for (SupportPart part : support.map(WallSupport::parts).orElse(List.of())) {
      part.buildingFace()
          .map(face -> slab(new Span(-FAR, face), new Span(-FAR, FAR)))
          .ifPresent(wall -> walls.add(wall.mapped(part.axes()::toRoom)));
    }
    return walls;
  }

  /** Without end along x. */
  private static Solid slab(Span y, Span z) {
    Polygon area = Shapes.rectangle(new Envelope(-FAR, FAR, y.low(), y.high()));
    return Solid.between(area, z.low(), area, z.high());
  }
}
