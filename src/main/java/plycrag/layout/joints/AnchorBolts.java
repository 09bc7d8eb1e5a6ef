package plycrag.layout.joints;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.ThroughBolt;
import plycrag.solve.fixing.ThroughLine;
import plycrag.solve.fixing.TimberBody;
import plycrag.wall.Wall;

/**
 * Where anchors go through timber: as thick as the wall's bolts and straight, from the side away
 * from the building to where that begins; where other timber ends over one, or a sheet lies over
 * it, its head is sunk. What they are in the building is left to who chooses them.
 */
final class AnchorBolts {
  private final double diameter;
  private final Map<String, TimberBody> timber = new HashMap<>();
  private final Map<String, FacetPlane> planes = new HashMap<>();

  AnchorBolts(
      Wall wall, List<FacetLayout> facets, Optional<WallSupport> support, List<TimberBody> bodies) {
    this.diameter = wall.joints().bolts().diameter();
    bodies.forEach(body -> timber.put(body.mark(), body));
    facets.forEach(
        facet -> facet.members().forEach(one -> planes.put(one.mark(), facet.facet().plane())));
    support.stream()
        .flatMap(one -> one.members().stream())
        .forEach(one -> planes.put(one.member().mark(), one.plane()));
  }

  Hardware.Anchored of(Anchor anchor) {
    Vector3 way = way(anchor);
    double thick = timber.get(anchor.member()).through(anchor.place(), way.times(-1));
    ThroughBolt flush = bolt(anchor, way, thick);
    if (!isUnderSheet(anchor, way)
        && flush.bodies().stream().noneMatch(part -> isCovered(part, anchor.member()))) {
      return new Hardware.Anchored(anchor, flush, 0);
    }
    double sunk = Math.min(Tolerance.wholeUp(flush.headHeight()), thick);
    return new Hardware.Anchored(anchor, bolt(anchor, way, thick - sunk), sunk);
  }

  private ThroughBolt bolt(Anchor anchor, Vector3 way, double grip) {
    Vector3 head = anchor.place().minus(way.times(grip));
    return ThroughBolt.intoBuilding(new ThroughLine(head, way, grip), diameter);
  }

  /** Whether it goes through a frame from the side that sheets lie on. */
  private boolean isUnderSheet(Anchor anchor, Vector3 way) {
    return timber.get(anchor.member()).sheeted()
        && way.equals(planes.get(anchor.member()).normal().times(-1));
  }

  private boolean isCovered(Solid part, String member) {
    return timber.values().stream()
        .filter(body -> !body.mark().equals(member))
        .anyMatch(body -> body.solid().overlapsByMoreThan(Tolerance.MARKED, part));
  }

  /** Into the building. */
  private Vector3 way(Anchor anchor) {
    return switch (anchor.into()) {
      case FLOOR -> new Vector3(0, 0, -1);
      case JOIST -> new Vector3(0, 0, 1);
      case STUD, MASONRY, CONCRETE, SINGLE_SKIN -> planes.get(anchor.member()).normal().times(-1);
    };
  }
}
