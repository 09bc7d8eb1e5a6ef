package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.wall.Wall;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Fixing;

/**
 * A plumb frame that lies flat on the building's wall: it is fixed along its plates, level or
 * slanting, and there is no timber behind it. Anchors go through a plate between the uprights that
 * end on it; where a stud of the building is behind one of those, through that, near its end. What
 * stands on the floor carries its weight.
 */
final class FlatOnWall {
  /** From the end of a plate, and from what ends on it (common practice, no source), mm. */
  private static final double BESIDE = 30;

  /** From a plate to an anchor through what ends on it, clear of the screws there, mm. */
  private static final double UP = 90;

  /** From the middle of a screw to that of an anchor, beyond the rim of its washer, mm. */
  private static final double OFF_SCREW = 20;

  /** So far from the middle of a building's stud an anchor still has wood around it, mm. */
  private static final double WITHIN_STUD = 10;

  /** So far from where it would stand an anchor may be, mm. */
  private static final double WITHIN_BAY = 40;

  private static final double STEP = 5;

  private final RunSite run;
  private final Fixing fixing;
  private final Wall wall;

  /**
   * @param run whose facets are plumb
   */
  FlatOnWall(RunSite run, Wall wall) {
    this.run = run;
    this.fixing = run.asked().fixing();
    this.wall = wall;
  }

  /** Where an anchor goes through a member, in the facet, mm. */
  private record Place(Member member, double u, double v) {}

  /**
   * The anchors, facet by facet from the floor up, plate by plate.
   *
   * @param before how many there are already
   */
  List<Anchor> anchors(int before) {
    List<Anchor> anchors = new ArrayList<>();
    for (FacetLayout facet : run.facets()) {
      plates(facet)
          .flatMap(plate -> places(plate, facet))
          .forEach(place -> anchors.add(anchor(place, facet, before + anchors.size() + 1)));
    }
    return anchors;
  }

  private Anchor anchor(Place place, FacetLayout facet, int number) {
    Vector3 back = new Vector3(place.u(), place.v(), wall.frameBack());
    return new Anchor(
        "AN" + number,
        place.member().mark(),
        Anchor.Into.of(fixing.base()),
        facet.facet().plane().toRoom(back));
  }

  private static Stream<Member> plates(FacetLayout facet) {
    return facet.members().stream().filter(Member::endsUprights);
  }

  private Stream<Place> places(Member plate, FacetLayout facet) {
    List<Member> uprights = run.frames().uprights(facet, plate);
    if (fixing.base().filter(base -> base == Base.STUDS).isPresent()) {
      return onStuds(facet, plate.box()).flatMap(x -> onStud(x, plate, uprights, facet).stream());
    }
    List<Envelope> boxes = uprights.stream().map(Member::box).toList();
    return new PlatePlaces(fixing.spacing(), wall.tape())
        .of(plate.box(), boxes).stream()
            .flatMap(u -> through(plate, u, WITHIN_BAY, facet).stream());
  }

  /** The middles of the building's studs behind a plate, in the facet. */
  private Stream<Double> onStuds(FacetLayout facet, Envelope plate) {
    double first = run.fromLeft(fixing.firstStud()) - facet.facet().plane().left();
    double spaces = Math.ceil((plate.getMinX() - first) / fixing.studSpacing());
    return Stream.iterate(
        first + spaces * fixing.studSpacing(),
        x -> x <= plate.getMaxX(),
        x -> x + fixing.studSpacing());
  }

  /** Through the plate, or through what ends on it just there. */
  private Optional<Place> onStud(double x, Member plate, List<Member> uprights, FacetLayout facet) {
    Envelope box = plate.box();
    boolean isWithin = x >= box.getMinX() + BESIDE && x <= box.getMaxX() - BESIDE;
    if (isWithin && uprights.stream().allMatch(one -> isClear(one.box(), x))) {
      return through(plate, x, WITHIN_STUD, facet);
    }
    return uprights.stream()
        .filter(one -> Math.abs(one.box().centre().x - x) <= WITHIN_STUD)
        .findFirst()
        .flatMap(one -> through(one, plate, facet));
  }

  private static boolean isClear(Envelope upright, double x) {
    return x < upright.getMinX() - BESIDE || x > upright.getMaxX() + BESIDE;
  }

  /** The nearest place along a plate that is clear of the screws of its sheets. */
  private static Optional<Place> through(
      Member plate, double wished, double most, FacetLayout facet) {
    return near(wished, most, u -> isOffScrews(plate, facet, screw -> screw.getX() - u))
        .map(u -> new Place(plate, u, middle(plate, u)));
  }

  /** How high the middle of a plate is at a place along it. */
  private static double middle(Member plate, double u) {
    Coordinate centre = plate.box().centre();
    return centre.y + (u - centre.x) * plate.direction().v() / plate.direction().u();
  }

  /** The place nearest to a plate on what ends on it. */
  private static Optional<Place> through(Member upright, Member plate, FacetLayout facet) {
    Envelope box = upright.box();
    boolean isAbove = box.centre().y > middle(plate, box.centre().x);
    double wished = isAbove ? box.getMinY() + UP : box.getMaxY() - UP;
    return near(wished, WITHIN_BAY, v -> isOffScrews(upright, facet, screw -> screw.getY() - v))
        .map(v -> new Place(upright, box.centre().x, v));
  }

  private static boolean isOffScrews(
      Member member, FacetLayout facet, ToDoubleFunction<Point> along) {
    return facet.screws().stream()
        .filter(screw -> screw.member().equals(member.mark()))
        .allMatch(screw -> Math.abs(along.applyAsDouble(screw.centre())) >= OFF_SCREW);
  }

  private static Optional<Double> near(double wished, double most, Predicate<Double> isClear) {
    return Stream.iterate(0.0, by -> by <= most, by -> by + STEP)
        .flatMap(by -> Stream.of(wished - by, wished + by))
        .filter(isClear)
        .findFirst();
  }
}
