package plycrag.layout.support;

import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.layout.frame.Member;
import plycrag.wall.buying.Section;

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

  /** What it measures across its grain, the smaller side first; bevels lie inside. */
  public Section section() {
    Direction across = member.direction().across();
    Span near = across.span(member.footprint());
    Span far = across.span(member.far());
    double side = Math.max(near.high(), far.high()) - Math.min(near.low(), far.low());
    return new Section(Math.min(side, member.depth()), Math.max(side, member.depth()));
  }
}
