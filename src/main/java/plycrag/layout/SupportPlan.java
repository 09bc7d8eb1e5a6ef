package plycrag.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Shapes;
import plycrag.layout.support.FixedTies;
import plycrag.layout.support.Freestanding;
import plycrag.layout.support.Hangers;
import plycrag.layout.support.HingedFoot;
import plycrag.layout.support.Meeting;
import plycrag.layout.support.SectionPlace;
import plycrag.layout.support.Site;
import plycrag.layout.support.Stiffening;
import plycrag.layout.support.SupportFrame;
import plycrag.layout.support.Timber;
import plycrag.layout.support.Use;
import plycrag.params.SupportParameters;
import plycrag.params.SupportParameters.Across;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** Sets what holds each run of facets up, and finds what of the frame it meets. */
final class SupportPlan {
  private final Wall wall;
  private final SupportParameters asked;
  private final MemberNumbers numbers = new MemberNumbers();
  private final List<PlacedMember> members = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<Tether> tethers = new ArrayList<>();
  private final List<String> unheld = new ArrayList<>();
  private boolean sways;
  private double widestBay;
  private int lastJoint;

  private SupportPlan(Wall wall, SupportParameters asked, int lastJoint) {
    this.wall = wall;
    this.asked = asked;
    this.lastJoint = lastJoint;
  }

  /**
   * The support that a wall asks for.
   *
   * @param frames all facets, run by run from the floor up
   * @param lastJoint the number of the frame's last joint
   */
  static Optional<Support> of(Wall wall, List<FramedFacet> frames, int lastJoint) {
    return wall.support().map(asked -> new SupportPlan(wall, asked, lastJoint).support(frames));
  }

  private Support support(List<FramedFacet> frames) {
    List<List<FramedFacet>> runs = Facet.runs(frames, FramedFacet::facet);
    for (int number = 0; number < runs.size(); number++) {
      List<FramedFacet> run = runs.get(number);
      RunSite site = new RunSite(wall, asked, run);
      if (site.isBearing()) {
        add(number, site, frame(site));
      } else {
        run.forEach(frame -> unheld.add(frame.facet().name()));
      }
    }
    List<String> each = unheld.stream().distinct().toList();
    return new Support(asked.kind(), members, joints, anchors, tethers, each, sways, widestBay);
  }

  private SupportFrame frame(RunSite run) {
    Site site = run.site();
    return switch (asked.kind()) {
      case FREESTANDING -> Freestanding.of(site, asked.behind(), run.railFront(), stiffening());
      case FIXED -> FixedTies.of(site, asked.behind());
      case HUNG -> Hangers.of(site, run.ceiling());
      case HINGED -> HingedFoot.of(site, asked.behind(), run.anchorHeight());
    };
  }

  private Stiffening stiffening() {
    SupportParameters.Bracing bracing = asked.bracing();
    Stiffening.Along along =
        switch (bracing.lateral()) {
          case BRACES -> Stiffening.Along.BRACES;
          case KNEE_BRACES -> Stiffening.Along.KNEES;
          case SHEETS, NONE -> Stiffening.Along.NOTHING;
        };
    return new Stiffening(along, bracing.across() == Across.KNEE_BRACES, bracing.knee());
  }

  private void add(int number, RunSite run, SupportFrame frame) {
    Map<Timber, PlacedMember> byTimber = new HashMap<>();
    for (Timber timber : frame.timbers()) {
      Role role = role(timber.use());
      Member member =
          new Member(
              numbers.next(role),
              role,
              Hold.SUPPORT,
              timber.direction(),
              timber.outline(),
              timber.outline(),
              timber.depth());
      PlacedMember placed = new PlacedMember(member, timber.plane(), number);
      byTimber.put(timber, placed);
      members.add(placed);
    }
    for (Meeting meeting : frame.meetings()) {
      add(run, meeting, byTimber);
    }
    unheld.addAll(frame.unheld());
    sways |= frame.sways();
    widestBay = Math.max(widestBay, run.site().widestBay());
    Anchorage anchorage = new Anchorage(wall, asked, run);
    anchors.addAll(
        anchorage.anchors(frame.timbers().stream().map(byTimber::get).toList(), anchors.size()));
    tethers.addAll(run.tethers(tethers.size()));
  }

  private static Role role(Use use) {
    return switch (use) {
      case POST -> Role.POST;
      case TIE -> Role.TIE;
      case RAIL -> Role.RAIL;
      case BRACE -> Role.BRACE;
      case KNEE -> Role.KNEE;
      case BEAM -> Role.BEAM;
      case LEDGER -> Role.LEDGER;
      case HANGER -> Role.HANGER;
    };
  }

  private void add(RunSite run, Meeting meeting, Map<Timber, PlacedMember> byTimber) {
    PlacedMember first = byTimber.get(meeting.first());
    if (meeting.second().isPresent()) {
      add(meeting, first, byTimber.get(meeting.second().get()).member());
      return;
    }
    Optional<Member> touched = run.touched(first, meeting.facet());
    touched.ifPresentOrElse(
        member -> add(run.onto(meeting, member), first, member), () -> unheld.add(meeting.facet()));
  }

  private void add(Meeting meeting, PlacedMember first, Member second) {
    SectionPlace place = meeting.place();
    lastJoint++;
    joints.add(
        new Joint(
            "J" + lastJoint,
            meeting.lapped() ? Joint.Kind.SIDE : Joint.Kind.END,
            first.member().mark(),
            second.mark(),
            Shapes.point(place.y(), place.z()),
            meeting.length()));
  }
}
