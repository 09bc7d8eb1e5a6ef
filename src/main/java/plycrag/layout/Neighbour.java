package plycrag.layout;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Place;
import plycrag.geometry.Solid;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * A member of another facet, as it lies behind this one.
 *
 * @param member the member
 * @param body in this facet's (u, v, w)
 */
record Neighbour(Member member, Solid body) {

  /** The members of all other facets. */
  static List<Neighbour> of(FramedFacet facet, List<FramedFacet> all, Wall wall) {
    return all.stream()
        .filter(other -> !other.facet().name().equals(facet.facet().name()))
        .flatMap(
            other ->
                other.members().stream()
                    .map(member -> of(member, other.facet(), facet.facet(), wall)))
        .toList();
  }

  private static Neighbour of(Member member, Facet from, Facet to, Wall wall) {
    Solid body =
        member
            .body(wall.sheet().thickness())
            .mapped(place -> to.plane().fromRoom(from.plane().toRoom(place)));
    return new Neighbour(member, body);
  }

  /** The smallest box around it, seen square to this facet. */
  Envelope shadow() {
    Envelope box = new Envelope();
    Stream.of(body.near(), body.far())
        .flatMap(List::stream)
        .forEach((Place corner) -> box.expandToInclude(corner.x(), corner.y()));
    return box;
  }
}
