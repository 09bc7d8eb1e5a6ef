package plycrag.layout.support;

import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.layout.frame.Member;

/**
 * A member that belongs to no facet, and where it stands.
 *
 * @param member in (u, v) of its plane, which is one of its sides
 * @param plane of that side
 * @param run the number of the run that it holds, from 0
 */
public record PlacedMember(Member member, FacetPlane plane, int run) {

  /** Its body in the room. */
  public Solid body() {
    return member.body(0).mapped(plane::toRoom);
  }
}
