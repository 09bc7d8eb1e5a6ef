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
import plycrag.layout.frame.MemberNumbers;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.solve.support.FixedTies;
import plycrag.solve.support.Freestanding;
import plycrag.solve.support.Hangers;
import plycrag.solve.support.HingedFoot;
import plycrag.solve.support.Meeting;
import plycrag.solve.support.SectionPlace;
import plycrag.solve.support.Stiffening;
import plycrag.solve.support.SupportFrame;
import plycrag.solve.support.SupportSite;
import plycrag.solve.support.SupportTimber;
import plycrag.solve.support.TimberUse;
import plycrag.solve.support.Unheld;
import plycrag.wall.Facet;
import plycrag.wall.Wall;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Across;

/** Sets what holds each run of facets up, and finds what of the frame it meets. */
public final class SupportPlan {
  private final Wall wall;
  private final GivenSupport asked;
  private final MemberNumbers numbers = new MemberNumbers();
  private final List<PlacedMember> members = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<Tether> tethers = new ArrayList<>();
  private final List<Unheld> unheld = new ArrayList<>();
  private final List<String> unmet = new ArrayList<>();
  private boolean sways;
  private double widestBay;
  private int lastJoint;

  private SupportPlan(Wall wall, GivenSupport asked, int lastJoint) {
    this.wall = wall;
    this.asked = asked;
    this.lastJoint = lastJoint;
  }

  /**
   * The support that a wall asks for.
   *
   * @param facets all of them, run by run from the floor up
   * @param lastJoint the number of the frame's last joint
   */
  public static Optional<WallSupport> of(Wall wall, List<FacetLayout> facets, int lastJoint) {
    return wall.support().map(asked -> new SupportPlan(wall, asked, lastJoint).support(facets));
  }

  private WallSupport support(List<FacetLayout> facets) {
    List<List<FacetLayout>> runs = Facet.runs(facets, FacetLayout::facet);
    for (int number = 0; number < runs.size(); number++) {
      List<FacetLayout> run = runs.get(number);
      RunSite site = new RunSite(wall, asked, run);
      if (site.isBearing()) {
        add(number, site, frame(site, runs.size() == 1));
      } else {
        run.forEach(facet -> unmet.add(facet.facet().name()));
      }
    }
    return new WallSupport(
        asked.kind(),
        members,
        joints,
        anchors,
        tethers,
        once(unheld),
        unmet.stream().distinct().toList(),
        sways,
        widestBay);
  }

  /** What stations tell of one facet for one cause, once. */
  private static List<Unheld> once(List<Unheld> unheld) {
    Map<List<Object>, Unheld> first = new LinkedHashMap<>();
    unheld.forEach(one -> first.putIfAbsent(List.of(one.facet(), one.cause()), one));
    return List.copyOf(first.values());
  }

  private SupportFrame frame(RunSite run, boolean isAlone) {
    SupportSite site = run.site();
    return switch (asked.kind()) {
      case FREESTANDING -> Freestanding.of(site, asked.behind(), run.railFront(), stiffening());
      case FIXED -> FixedTies.of(site, asked.behind());
      case HUNG -> Hangers.of(site, run.ceiling(), new JoistReach(wall, run).of(isAlone));
      case HINGED -> HingedFoot.of(site, asked.behind(), run.anchorHeight());
    };
  }

  private Stiffening stiffening() {
    GivenSupport.Bracing bracing = asked.bracing();
    Stiffening.Along along =
        switch (bracing.lateral()) {
          case BRACES -> Stiffening.Along.BRACES;
          case KNEE_BRACES -> Stiffening.Along.KNEES;
          case SHEETS, NONE -> Stiffening.Along.NOTHING;
        };
    return new Stiffening(along, bracing.across() == Across.KNEE_BRACES, bracing.knee());
  }

  private void add(int number, RunSite run, SupportFrame frame) {
    Map<SupportTimber, PlacedMember> byTimber = new HashMap<>();
    for (SupportTimber timber : frame.timbers()) {
      MemberRole role = role(timber.use());
      Member member =
          new Member(
              numbers.next(role),
              role,
              Fixity.SUPPORT,
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

  private void add(RunSite run, Meeting meeting, Map<SupportTimber, PlacedMember> byTimber) {
    PlacedMember first = byTimber.get(meeting.first());
    if (meeting.second().isPresent()) {
      add(meeting, first, byTimber.get(meeting.second().get()).member());
      return;
    }
    Optional<Member> touched = run.touched(first, meeting.facet());
    touched.ifPresentOrElse(
        member -> add(run.onto(meeting, member), first, member), () -> unmet.add(meeting.facet()));
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
