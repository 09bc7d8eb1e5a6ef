package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.TimberBody;
import plycrag.wall.Wall;

/** All timber of a wall as bodies in the room: facet by facet, that of the support last. */
final class TimberBodies {
  private TimberBodies() {}

  static List<TimberBody> of(Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    List<TimberBody> bodies = new ArrayList<>();
    for (FacetLayout facet : facets) {
      FacetPlane plane = facet.facet().plane();
      for (Member member : facet.members()) {
        bodies.add(body(member, wall.sheet().thickness(), plane::toRoom, true));
      }
    }
    for (PlacedMember placed : support.map(WallSupport::members).orElse(List.of())) {
      bodies.add(body(placed.member(), 0, placed.plane()::toRoom, false));
    }
    return bodies;
  }

  private static TimberBody body(
      Member member, double behind, UnaryOperator<Vector3> toRoom, boolean sheeted) {
    Vector3 way = new Vector3(member.direction().u(), member.direction().v(), 0);
    Vector3 inRoom = toRoom.apply(way).minus(toRoom.apply(new Vector3(0, 0, 0)));
    return new TimberBody(
        member.mark(), member.body(behind).mapped(toRoom), inRoom.unit(), sheeted);
  }
}
