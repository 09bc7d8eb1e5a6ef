package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.GussetPlan;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.TimberBody;
import plycrag.units.LengthUnit;
import plycrag.wall.ScrewReach;
import plycrag.wall.Wall;

/** Chooses what holds each joint, step by step: what is chosen earlier, later steps keep clear of. */
final class FixingPlan {
  private final Wall wall;
  private final List<FacetLayout> facets;
  private final List<TimberBody> bodies;
  private final List<Joint> framed;
  private final List<Joint> supporting;
  private final List<Joint> joints;

  FixingPlan(Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    this.wall = wall;
    this.facets = facets;
    this.bodies = bodies(wall, facets, support);
    this.framed = facets.stream().flatMap(facet -> facet.joints().stream()).toList();
    this.supporting = support.map(WallSupport::joints).orElse(List.of());
    this.joints = Stream.concat(framed.stream(), supporting.stream()).toList();
  }

  Fixings fixings() {
    Fixings paired = Fixings.NONE.with(pairs());
    List<TimberBody> around = new ArrayList<>(bodies);
    paired.gussets().forEach(gusset -> around.add(body(gusset)));
    JointFixing finder = new JointFixing(wall, around);
    List<Joint> single =
        joints.stream().filter(joint -> paired.gussetsOf(joint).isEmpty()).toList();
    Fixings alone =
        new Fixings(
            each(joints, finder::through), each(single, finder::steel), Map.of(), paired.gussets());
    return withGussets(withOthers(alone));
  }

  /**
   * What a support hands on at an end it hands on through plywood on both sides, or it would bend
   * what it ends on. They come first, since nothing else can take their place.
   */
  private List<Gusset> pairs() {
    List<Joint> ends =
        supporting.stream().filter(joint -> joint.kind() == Joint.Kind.END).toList();
    if (ends.isEmpty()) {
      return List.of();
    }
    GussetRoom room = new GussetRoom(wall, facets, bodies, Stream.of());
    return new GussetChoice(gussetPlan(), bodies, room, true).of(ends);
  }

  /** As what stands in the way of others. */
  private static TimberBody body(Gusset gusset) {
    Solid taken = gusset.fit().taken();
    Vector3 way = taken.near().get(1).minus(taken.near().get(0)).unit();
    return new TimberBody(gusset.mark(), taken, way, false);
  }

  private Fixings withOthers(Fixings fixings) {
    HeldByOthers hold = new HeldByOthers(joints, fixings);
    Map<String, List<String>> found = new LinkedHashMap<>();
    joints.stream()
        .filter(fixings::isUnheld)
        .forEach(joint -> found.put(joint.mark(), hold.of(joint)));
    return new Fixings(fixings.through(), fixings.steel(), found, fixings.gussets());
  }

  private Fixings withGussets(Fixings fixings) {
    List<Joint> unheld =
        joints.stream().filter(fixings::isUnheld).filter(Joint::mayHaveGusset).toList();
    return unheld.isEmpty()
        ? fixings
        : fixings.with(new GussetChoice(gussetPlan(), bodies, room(fixings), false).of(unheld));
  }

  private GussetRoom room(Fixings fixings) {
    Stream<Solid> steel = fixings.steel().values().stream().flatMap(one -> one.taken().stream());
    Stream<Solid> plywood = fixings.gussets().stream().map(one -> one.fit().taken());
    return new GussetRoom(wall, facets, bodies, Stream.concat(steel, plywood));
  }

  private GussetPlan gussetPlan() {
    double thickness = wall.sheet().thickness();
    double narrowest = Math.min(wall.sheet().length(), wall.sheet().width());
    return new GussetPlan(
        thickness,
        Math.min(GussetPlan.LARGEST, narrowest),
        (wall.joints().bracketScrews() + 1) / 2,
        wall.tape().unit() == LengthUnit.IN ? GussetPlan.NUMBERED : GussetPlan.METRIC,
        ScrewReach.DEPTH_IN_DIAMETERS,
        ScrewReach.FAR_SIDE,
        wall.screws().length() - thickness,
        wall.tape());
  }

  /** What is found for joints, side by side, in their order. */
  private static <T> Map<String, T> each(List<Joint> joints, Function<Joint, Optional<T>> find) {
    List<Optional<T>> found = joints.parallelStream().map(find).toList();
    Map<String, T> byMark = new LinkedHashMap<>();
    for (int at = 0; at < joints.size(); at++) {
      String mark = joints.get(at).mark();
      found.get(at).ifPresent(one -> byMark.put(mark, one));
    }
    return byMark;
  }

  private static List<TimberBody> bodies(
      Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    List<TimberBody> bodies = new ArrayList<>();
    for (FacetLayout facet : facets) {
      FacetPlane plane = facet.facet().plane();
      for (Member member : facet.members()) {
        bodies.add(body(member, wall.sheet().thickness(), plane::toRoom, true));
      }
    }
    for (PlacedMember placed : support.map(WallSupport::members).orElse(List.of())) {
      bodies.add(body(placed.member(), 0, placed.plane()::toRoom, false));
    }
    return bodies;
  }

  private static TimberBody body(
      Member member, double behind, UnaryOperator<Vector3> toRoom, boolean sheeted) {
    Vector3 way = new Vector3(member.direction().u(), member.direction().v(), 0);
    Vector3 inRoom = toRoom.apply(way).minus(toRoom.apply(new Vector3(0, 0, 0)));
    return new TimberBody(
        member.mark(), member.body(behind).mapped(toRoom), inRoom.unit(), sheeted);
  }
}
