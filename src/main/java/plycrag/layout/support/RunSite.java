package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.FramedFacet;
import plycrag.solve.support.BackEdge;
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

  /** What of the frames it meets. */
  RunFrames frames() {
    return new RunFrames(wall, run, stands);
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

  private BackEdge back(FacetLayout facet) {
    FramedFacet frame = facet.frame();
    Envelope box = new Envelope();
    frame.members().forEach(member -> box.expandToInclude(member.far().getEnvelopeInternal()));
    FacetPlane plane = frame.facet().plane();
    return new BackEdge(
        frame.facet().name(),
        frame.facet().angle(),
        new SectionPlace(
            plane.y(box.getMinY(), wall.frameBack()), plane.z(box.getMinY(), wall.frameBack())),
        new SectionPlace(
            plane.y(box.getMaxY(), wall.frameBack()), plane.z(box.getMaxY(), wall.frameBack())),
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
    return top().plane().toRoom(new Vector3(u, v, wall.frameBack()));
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
}
