package plycrag.layout.support;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Footing;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.solve.support.Meeting;
import plycrag.solve.support.SectionPlace;
import plycrag.wall.Wall;

/**
 * What of the frames of facets that stand on each other a support meets.
 *
 * @param run the facets, from the floor up
 * @param stands whether no other facet is below them
 */
record RunFrames(Wall wall, List<FacetLayout> run, boolean stands) {
  /** How far a member is pushed to find what it meets, and how far it must then reach in, mm. */
  private static final double PUSH = 1;

  private static final double REACH = 0.3;
  private static final double FLUSH = 1;

  /** The plates that the lowest frame stands on; none where it is above the floor. */
  List<PlacedMember> feet() {
    FramedFacet lowest = run.get(0).frame();
    if (!stands || Footing.hangs(lowest.facet())) {
      return List.of();
    }
    FacetPlane plane = lowest.facet().plane();
    double behind = wall.sheet().thickness();
    FacetPlane back =
        new FacetPlane(
            plane.angle(), plane.left(), plane.y(0, behind), plane.z(0, behind), plane.floorAxes());
    double low = lowest.footing().plateLow();
    return lowest.members().stream()
        .filter(
            member -> member.role() == MemberRole.PLATE && member.box().getMinY() <= low + FLUSH)
        .map(member -> new PlacedMember(member, back, 0))
        .toList();
  }

  /** What of the lowest frame stands on a plate, from the left, in the facet. */
  List<Envelope> uprights(Member plate) {
    return uprights(run.get(0), plate).stream().map(Member::box).toList();
  }

  /** What of a frame ends on a plate, from the left, in the facet. */
  List<Member> uprights(FacetLayout facet, Member plate) {
    return facet.members().stream()
        .filter(member -> member.role().isUpright())
        .filter(member -> member.footprint().distance(plate.footprint()) < FLUSH)
        .sorted(Comparator.comparingDouble(member -> member.box().getMinX()))
        .toList();
  }

  /** That part of where a support meets a frame that lies on one upright member of it. */
  Meeting onto(Meeting meeting, Member member) {
    if (!member.role().isUpright()) {
      return meeting;
    }
    FacetPlane plane = frame(meeting.facet()).facet().plane();
    SectionPlace place = meeting.place();
    double middle =
        plane.fromRoom(plane.floorAxes().toRoom(new Vector3(0, place.y(), place.z()))).y();
    double half = meeting.length() / 2;
    Envelope back = member.far().getEnvelopeInternal();
    double low = Math.max(middle - half, back.getMinY());
    double high = Math.min(middle + half, back.getMaxY());
    double v = (low + high) / 2;
    return meeting.on(
        new SectionPlace(plane.y(v, wall.frameBack()), plane.z(v, wall.frameBack())), high - low);
  }

  private FramedFacet frame(String facet) {
    return run.stream()
        .filter(one -> one.facet().name().equals(facet))
        .findFirst()
        .orElseThrow()
        .frame();
  }

  /** The member of a facet's frame that a support's member lies flat against, studs first. */
  Optional<Member> touched(PlacedMember placed, String facet) {
    FramedFacet frame = frame(facet);
    Vector3 push =
        placed.member().role() == MemberRole.RAIL
            ? new Vector3(0, 0, PUSH + Math.max(0, frame.footing().packing()))
            : frame.facet().plane().normal();
    Solid pushed = placed.body().mapped(corner -> corner.plus(push));
    double thickness = wall.sheet().thickness();
    return frame.members().stream()
        .filter(
            member ->
                member
                    .body(thickness)
                    .mapped(frame.facet().plane()::toRoom)
                    .overlapsByMoreThan(REACH, pushed))
        .min(Comparator.comparing(member -> !member.role().isUpright()));
  }
}
