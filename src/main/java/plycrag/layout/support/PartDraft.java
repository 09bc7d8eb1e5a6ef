package plycrag.layout.support;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.solve.support.Meeting;
import plycrag.solve.support.SectionPlace;
import plycrag.solve.support.SupportFrame;
import plycrag.solve.support.SupportTimber;
import plycrag.solve.support.TimberUse;
import plycrag.solve.support.Unheld;
import plycrag.wall.Wall;

/** Turns the timber of one part into members with joints, anchors and tethers. */
final class PartDraft {
  private final Wall wall;
  private final RunSite site;
  private final int run;
  private final SupportNumbers numbers;
  private final List<PlacedMember> members = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<String> unmet = new ArrayList<>();

  /**
   * @param run which run of the wall it holds
   * @param numbers of all parts
   */
  PartDraft(Wall wall, RunSite site, int run, SupportNumbers numbers) {
    this.wall = wall;
    this.site = site;
    this.run = run;
    this.numbers = numbers;
  }

  /** Nothing: this kind cannot hold what stands there. */
  SupportPart part() {
    return part(List.of());
  }

  /** Nothing, since some facets have no timber to hold them by. */
  SupportPart part(List<String> without) {
    return part(without, List.of(), List.of(), SupportFrame.NONE, 0);
  }

  /** A frame that lies on the building's wall; a facet that leans does not. */
  SupportPart flat() {
    List<Unheld> leaning =
        site.facets().stream()
            .map(FacetLayout::facet)
            .filter(facet -> facet.angle() != 0)
            .map(facet -> new Unheld(facet.name(), Unheld.Cause.NOT_FLAT, facet.angle(), 0))
            .toList();
    List<Anchor> anchors =
        leaning.isEmpty() ? new FlatOnWall(site, wall).anchors(numbers.anchors()) : List.of();
    numbers.count(anchors, List.of());
    SupportFrame frame = new SupportFrame(List.of(), List.of(), leaning, false);
    return part(List.of(), anchors, List.of(), frame, 0);
  }

  SupportPart part(SupportFrame frame) {
    Map<SupportTimber, PlacedMember> byTimber = new HashMap<>();
    for (SupportTimber timber : frame.timbers()) {
      PlacedMember placed = new PlacedMember(member(timber), timber.plane(), run);
      byTimber.put(timber, placed);
      members.add(placed);
    }
    frame.meetings().forEach(meeting -> add(meeting, byTimber));
    List<Anchor> anchors = new Anchorage(wall, site).anchors(members, numbers.anchors());
    List<Tether> tethers = new TetherPlan(wall, site).tethers(numbers.tethers());
    numbers.count(anchors, tethers);
    return part(unmet, anchors, tethers, frame, site.site().widestBay());
  }

  private SupportPart part(
      List<String> without,
      List<Anchor> anchors,
      List<Tether> tethers,
      SupportFrame frame,
      double widestBay) {
    return new SupportPart(
        run,
        site.names(),
        site.asked(),
        site.floorAxes(),
        site.asked().isOnWall() ? Optional.of(site.buildingFace()) : Optional.empty(),
        members,
        joints,
        anchors,
        tethers,
        once(frame.unheld()),
        without.stream().distinct().toList(),
        frame.sways(),
        widestBay);
  }

  /** What stations tell of one facet for one cause, once. */
  private static List<Unheld> once(List<Unheld> unheld) {
    Map<List<Object>, Unheld> first = new LinkedHashMap<>();
    unheld.forEach(one -> first.putIfAbsent(List.of(one.facet(), one.cause()), one));
    return List.copyOf(first.values());
  }

  private Member member(SupportTimber timber) {
    MemberRole role = role(timber.use());
    return new Member(
        numbers.nextMember(role),
        role,
        Fixity.SUPPORT,
        timber.direction(),
        timber.outline(),
        timber.outline(),
        timber.depth());
  }

  private static MemberRole role(TimberUse use) {
    return switch (use) {
      case POST -> MemberRole.POST;
      case TIE -> MemberRole.TIE;
      case RAIL -> MemberRole.RAIL;
      case HEEL -> MemberRole.HEEL;
      case SILL -> MemberRole.SILL;
      case BRACE -> MemberRole.BRACE;
      case KNEE -> MemberRole.KNEE;
      case BEAM -> MemberRole.BEAM;
      case LEDGER -> MemberRole.LEDGER;
      case HANGER -> MemberRole.HANGER;
    };
  }

  private void add(Meeting meeting, Map<SupportTimber, PlacedMember> byTimber) {
    PlacedMember first = byTimber.get(meeting.first());
    if (meeting.second().isPresent()) {
      add(meeting, first, byTimber.get(meeting.second().get()).member());
      return;
    }
    Optional<Member> touched = site.frames().touched(first, meeting.facet());
    touched.ifPresentOrElse(
        member -> add(site.frames().onto(meeting, member), first, member),
        () -> unmet.add(meeting.facet()));
  }

  private void add(Meeting meeting, PlacedMember first, Member second) {
    SectionPlace place = meeting.place();
    joints.add(
        new Joint(
            numbers.nextJoint(),
            meeting.lapped() ? Joint.Kind.SIDE : Joint.Kind.END,
            first.member().mark(),
            second.mark(),
            Shapes.point(place.y(), place.z()),
            meeting.length()));
  }
}
