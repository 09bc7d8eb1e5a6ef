package plycrag.layout.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Footing;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.solve.support.BackEdge;
import plycrag.solve.support.Meeting;
import plycrag.solve.support.SectionPlace;
import plycrag.solve.support.SupportSite;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.Swing;
import plycrag.wall.Wall;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.Room;

/** What facets that stand on each other and are held alike offer to a support. */
final class RunSite {
  /** How far below a facet's upper edge it is held where nothing is said (a choice), mm. */
  private static final double BELOW_EDGE = 150;

  /** Where tethers are held near a ledger's end, it goes on by so much (a choice), mm. */
  private static final double PAST = 80;

  /** How far a member is pushed to find what it meets, and how far it must then reach in, mm. */
  private static final double PUSH = 1;

  private static final double REACH = 0.3;
  private static final double FLUSH = 1;

  private final Wall wall;
  private final GivenSupport asked;
  private final List<FacetLayout> run;
  private final boolean stands;
  private final BearingStuds studs;
  private final SupportSite site;

  /**
   * @param asked how they are to be held
   * @param run the facets, from the floor up
   * @param stands whether no other facet is below them
   */
  RunSite(Wall wall, GivenSupport asked, List<FacetLayout> run, boolean stands) {
    this.wall = wall;
    this.asked = asked;
    this.run = run;
    this.stands = stands;
    this.studs = new BearingStuds(wall, asked.bay(), asked.kind() != Kind.FREESTANDING);
    SupportSite wished =
        new SupportSite(
            floorAxes(),
            held().stream().map(this::back).toList(),
            studs.inLine(held(), timber().wishedDown()),
            timber(),
            asked.bay(),
            wall.stock().longestMember(),
            wall.tape());
    List<BackEdge> backs = new ArrayList<>();
    for (int at = 0; at < wished.backs().size(); at++) {
      double lower = studs.lower(held().get(at), wished.stations(), timber().wishedDown());
      backs.add(wished.backs().get(at).lowered(lower));
    }
    this.site = wished.with(backs);
  }

  private SupportSite.Timber timber() {
    GivenSupport.Timber timber = asked.timber();
    return new SupportSite.Timber(
        wall.frame().breadth(),
        wall.frame().depth(),
        timber.rail(),
        timber.post(),
        timber.tie(),
        timber.brace(),
        timber.ledger().breadth(),
        timber.ledger().depth());
  }

  SupportSite site() {
    return site;
  }

  GivenSupport asked() {
    return asked;
  }

  /** From the floor up. */
  List<FacetLayout> facets() {
    return run;
  }

  /** The facets' names. */
  List<String> names() {
    return run.stream().map(facet -> facet.facet().name()).toList();
  }

  /** Whether it has studs to hold it by. */
  boolean isBearing() {
    return !site.studs().isEmpty();
  }

  /** The facets that have none. */
  List<String> unmet() {
    return held().stream()
        .filter(facet -> studs.of(facet).isEmpty())
        .map(facet -> facet.facet().name())
        .toList();
  }

  FloorAxes floorAxes() {
    return run.get(0).facet().plane().floorAxes();
  }

  /**
   * Where something is that was told from the left of the run, in x of the run, mm; the image of a
   * wall has it as far from its right.
   */
  double fromLeft(double told) {
    Facet lowest = run.get(0).facet();
    double about =
        floorAxes().equals(FloorAxes.FIRST)
            ? wall.frontWidth()
            : 2 * lowest.plane().left() + lowest.width();
    return wall.isMirrored() ? about - told : told;
  }

  /** The facets that timber holds: of a hinged run the lowest alone. */
  private List<FacetLayout> held() {
    return asked.kind() == Kind.HINGED ? run.subList(0, 1) : run;
  }

  /** From a face to the back of its frame, mm. */
  double behind() {
    return wall.sheet().thickness() + wall.frame().depth();
  }

  private BackEdge back(FacetLayout facet) {
    FramedFacet frame = facet.frame();
    Envelope box = new Envelope();
    frame.members().forEach(member -> box.expandToInclude(member.far().getEnvelopeInternal()));
    FacetPlane plane = frame.facet().plane();
    return new BackEdge(
        frame.facet().name(),
        frame.facet().angle(),
        new SectionPlace(plane.y(box.getMinY(), behind()), plane.z(box.getMinY(), behind())),
        new SectionPlace(plane.y(box.getMaxY(), behind()), plane.z(box.getMaxY(), behind())),
        studs.of(facet),
        studs.of(facet).stream().map(stud -> studs.fall(facet, stud)).toList(),
        studs.clear(facet),
        0);
  }

  /** How far toward the climber the face reaches at any of its angles, y of the run, mm. */
  double reach() {
    List<Facet> facets = run.stream().map(FacetLayout::facet).toList();
    List<Double> angles = swing().map(one -> Swing.angles(wall, one.hinged())).orElse(List.of(0.0));
    return angles.stream()
        .flatMap(angle -> FacetAtAngle.of(wall, facets, angle).stream())
        .flatMap(
            turned ->
                Stream.of(0.0, turned.facet().length())
                    .map(v -> floorAxes().fromRoom(turned.at(new Vector3(0, v, 0))).y()))
        .max(Double::compare)
        .orElse(0.0);
  }

  /** Where base rails end: under the outermost edge, but never behind the foot's plate. */
  double railFront() {
    return asked.front().orElse(Math.max(0, reach()));
  }

  /** Height of the ceiling where it is lowest over the run's upper edge; 0 where it is not told. */
  double ceiling() {
    Ceiling ceiling = wall.room().ceiling();
    double front = site.backs().get(site.backs().size() - 1).high().y();
    double left = top().plane().left();
    return Stream.of(left, left + top().width())
        .flatMap(
            x ->
                Stream.of(front, front - wall.frame().depth())
                    .map(y -> floorAxes().toRoom(new Vector3(x, y, 0))))
        .flatMap(place -> ceiling.at(place).stream())
        .min(Double::compare)
        .orElse(0.0);
  }

  /** Where a hinged run is held on the building. */
  double anchorHeight() {
    return asked.hinge().anchorHeight().orElseGet(this::highest);
  }

  /** How high the held place is at the angle at which it is highest. */
  private double highest() {
    Optional<Swing> swing = swing();
    return swing
        .map(
            one ->
                Swing.angles(wall, one.hinged()).stream()
                    .mapToDouble(angle -> one.at(angle, held(0, attach())).z())
                    .max()
                    .orElse(0))
        .orElse(0.0);
  }

  private Optional<Swing> swing() {
    return Swing.of(wall, run.stream().map(FacetLayout::facet).toList());
  }

  /** The uppermost facet. */
  Facet top() {
    return run.get(run.size() - 1).facet();
  }

  /** Where a hinged run is held on its uppermost facet, up the slope, mm. */
  double attach() {
    return asked.hinge().attach().orElse(top().length() - BELOW_EDGE);
  }

  private Vector3 held(double u, double v) {
    return top().plane().toRoom(new Vector3(u, v, behind()));
  }

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
  List<Envelope> uprights(Envelope plate) {
    return uprights(run.get(0), plate).stream().map(Member::box).toList();
  }

  /** What of a frame ends on a plate, from the left, in the facet. */
  List<Member> uprights(FacetLayout facet, Envelope plate) {
    return facet.members().stream()
        .filter(member -> member.role().isUpright())
        .filter(member -> endsOn(member.box(), plate))
        .sorted(Comparator.comparingDouble(member -> member.box().getMinX()))
        .toList();
  }

  private static boolean endsOn(Envelope upright, Envelope plate) {
    boolean touches =
        Math.abs(upright.getMinY() - plate.getMaxY()) < FLUSH
            || Math.abs(upright.getMaxY() - plate.getMinY()) < FLUSH;
    return touches && upright.getMaxX() > plate.getMinX() && upright.getMinX() < plate.getMaxX();
  }

  /** The face of the building's wall, y of the run. */
  double buildingFace() {
    return site.hindmost() - asked.behind();
  }

  /**
   * The left side of an outer station, x of the run, mm.
   *
   * @param inward where the middle of the wall is from it: 1 to the right, -1 to the left
   */
  double outerStation(int inward) {
    List<Double> stations = site.stations();
    return stations.get(inward > 0 ? 0 : stations.size() - 1);
  }

  /** How far a ledger may go on beyond the outer studs to either side, mm. */
  Span pastStations() {
    Room.Sides sides = wall.room().sides();
    return new Span(
        Math.min(PAST, sides.left().orElse(PAST)), Math.min(PAST, sides.right().orElse(PAST)));
  }

  /** Whether something of it turns. */
  boolean swings() {
    return swing().isPresent();
  }

  /** Left sides of the studs of its uppermost facet that may bear, x of the run, mm. */
  List<Double> upperStuds() {
    return studs.of(run.get(run.size() - 1));
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
    return meeting.on(new SectionPlace(plane.y(v, behind()), plane.z(v, behind())), high - low);
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
