package plycrag.layout.joints;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.ThroughBolt;
import plycrag.solve.fixing.ThroughLine;
import plycrag.solve.fixing.TimberBody;
import plycrag.wall.Wall;

/**
 * Where anchors go through timber: as thick as the wall's bolts and straight, from the side away
 * from the building to where that begins; where other timber ends over one, its head is sunk. What
 * they are in the building is left to who chooses them.
 */
final class AnchorBolts {
  private final double diameter;
  private final Map<String, TimberBody> timber = new HashMap<>();
  private final Map<String, PlacedMember> placed = new HashMap<>();

  AnchorBolts(Wall wall, Optional<WallSupport> support, List<TimberBody> bodies) {
    this.diameter = wall.joints().bolts().diameter();
    bodies.forEach(body -> timber.put(body.mark(), body));
    support.stream()
        .flatMap(one -> one.members().stream())
        .forEach(one -> placed.put(one.member().mark(), one));
  }

  Hardware.Anchored of(Anchor anchor) {
    Vector3 way = way(anchor);
    double thick = timber.get(anchor.member()).through(anchor.place(), way.times(-1));
    ThroughBolt flush = bolt(anchor, way, thick);
    if (flush.bodies().stream().noneMatch(part -> isCovered(part, anchor.member()))) {
      return new Hardware.Anchored(anchor, flush, 0);
    }
    double sunk = Math.min(Tolerance.wholeUp(flush.headHeight()), thick);
    return new Hardware.Anchored(anchor, bolt(anchor, way, thick - sunk), sunk);
  }

  private ThroughBolt bolt(Anchor anchor, Vector3 way, double grip) {
    Vector3 head = anchor.place().minus(way.times(grip));
    return ThroughBolt.intoBuilding(new ThroughLine(head, way, grip), diameter);
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
      case STUD, MASONRY, CONCRETE, SINGLE_SKIN ->
          placed.get(anchor.member()).plane().normal().times(-1);
    };
  }
}
