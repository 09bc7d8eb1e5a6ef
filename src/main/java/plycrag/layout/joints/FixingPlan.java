package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.GussetPlan;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.TimberBody;
import plycrag.units.LengthUnit;
import plycrag.wall.ScrewReach;
import plycrag.wall.Wall;

/**
 * Chooses what holds each joint, step by step: what is chosen earlier, later steps keep clear of.
 */
final class FixingPlan {
  private final Wall wall;
  private final List<FacetLayout> facets;
  private final Optional<WallSupport> support;
  private final List<TimberBody> bodies;
  private final List<Joint> framed;
  private final List<Joint> supporting;
  private final List<Joint> joints;

  FixingPlan(Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    this.wall = wall;
    this.facets = facets;
    this.support = support;
    this.bodies = TimberBodies.of(wall, facets, support);
    this.framed = facets.stream().flatMap(facet -> facet.joints().stream()).toList();
    this.supporting = support.map(WallSupport::joints).orElse(List.of());
    this.joints = Stream.concat(framed.stream(), supporting.stream()).toList();
  }

  Fixings fixings() {
    Fixings paired = paired();
    List<TimberBody> around = new ArrayList<>(bodies);
    paired.gussets().forEach(gusset -> around.add(body(gusset)));
    JointFixing finder = new JointFixing(wall, facets, around);
    List<Joint> single =
        joints.stream().filter(joint -> paired.gussetsOf(joint).isEmpty()).toList();
    Fixings alone = after(paired, single, finder);
    Fixings first = after(paired.having(crowded(alone, paired, finder)), single, finder);
    return withEnds(finder, withGussets(withOthers(first)));
  }

  /** What nothing else finds room to hold, and a plate lies over. */
  private Fixings withEnds(JointFixing finder, Fixings fixings) {
    FastenerRoom taken = new FastenerRoom(fasteners(fixings));
    Map<String, LapScrews> through = new LinkedHashMap<>(fixings.through());
    for (Joint joint : framed) {
      if (joint.kind() == Joint.Kind.END && fixings.isUnheld(joint)) {
        finder.intoEnd(joint, taken).ifPresent(found -> through.put(joint.mark(), found));
        new JointBodies(wall, Fixings.NONE.having(through)).of(joint).forEach(taken::add);
      }
    }
    return fixings.having(through);
  }

  /** Steel, then what goes through both members, among what is there before. */
  private Fixings after(Fixings before, List<Joint> single, JointFixing finder) {
    Fixings steel = before.with(steel(single, finder, before));
    return steel.having(through(finder, steel));
  }

  /**
   * What goes through both members where it has no room beside the steel, as it lies before that:
   * members side by side have nothing else to hold them.
   */
  private Map<String, LapScrews> crowded(Fixings all, Fixings before, JointFixing finder) {
    Map<String, LapScrews> found = new LinkedHashMap<>();
    through(finder, before)
        .forEach(
            (mark, screws) -> {
              if (!all.through().get(mark).holds()) {
                found.put(mark, screws);
              }
            });
    return found;
  }

  /**
   * The steel of joints, first each by itself among what is there for certain; where two are in
   * each other's way, the later one looks again.
   */
  private Map<String, SteelChoice> steel(List<Joint> single, JointFixing finder, Fixings before) {
    FastenerRoom certain = new FastenerRoom(fasteners(before));
    Map<String, SteelChoice> alone = each(single, joint -> finder.steel(joint, certain::isFree));
    FastenerRoom chosen = new FastenerRoom(Stream.of());
    Map<String, SteelChoice> steel = new LinkedHashMap<>();
    for (Joint joint : single) {
      SteelChoice choice = alone.get(joint.mark());
      if (choice != null && !choice.places().stream().allMatch(chosen::isFree)) {
        choice =
            finder
                .steel(joint, place -> certain.isFree(place) && chosen.isFree(place))
                .orElseThrow();
      }
      if (choice != null) {
        steel.put(joint.mark(), choice);
        choice.places().forEach(place -> place.bodies().forEach(chosen::add));
      }
    }
    return steel;
  }

  /** Screws and bolts find room along the timber: they come after the steel, which does not. */
  private Map<String, LapScrews> through(JointFixing finder, Fixings before) {
    FastenerRoom taken = new FastenerRoom(fasteners(before));
    Map<String, LapScrews> through = new LinkedHashMap<>();
    for (Joint joint : joints) {
      Optional<LapScrews> found = before.throughOf(joint);
      if (found.isEmpty()) {
        found = finder.through(joint, taken);
        found.ifPresent(
            screws ->
                new JointBodies(wall, Fixings.NONE.having(Map.of(joint.mark(), screws)))
                    .of(joint)
                    .forEach(taken::add));
      }
      found.ifPresent(screws -> through.put(joint.mark(), screws));
    }
    return through;
  }

  /** All that is in the sheets, in the timber and on it by now. */
  private Stream<Solid> fasteners(Fixings fixings) {
    JointBodies jointBodies = new JointBodies(wall, fixings);
    AnchorBolts anchorBolts = new AnchorBolts(wall, facets, support, bodies);
    return Stream.of(
            facets.stream()
                .flatMap(
                    facet ->
                        Stream.concat(
                            SheetFasteners.screws(wall, facet),
                            SheetFasteners.inserts(wall, facet)))
                .map(MarkedBody::body),
            joints.stream().flatMap(jointBodies::of),
            support.stream()
                .flatMap(one -> one.anchors().stream())
                .flatMap(anchor -> anchorBolts.of(anchor).parts().stream()),
            fixings.gussets().stream()
                .flatMap(
                    gusset ->
                        Stream.concat(
                            Stream.of(gusset.fit().body()),
                            gusset.fit().rods().stream().map(Rod::body))))
        .flatMap(all -> all);
  }

  /**
   * What a support hands on at an end it hands on through plywood on both sides, or it would bend
   * what it ends on. They come first, since nothing else can take their place.
   */
  private Fixings paired() {
    List<Joint> ends = supporting.stream().filter(joint -> joint.kind() == Joint.Kind.END).toList();
    if (ends.isEmpty()) {
      return Fixings.NONE;
    }
    FastenerRoom fasteners = new FastenerRoom(fasteners(Fixings.NONE));
    GussetRoom room = new GussetRoom(wall, facets, support, bodies, Stream.of(), fasteners);
    GussetChoice choice = new GussetChoice(gussetPlan(), bodies, room, true);
    Fixings found = Fixings.NONE.with(choice.of(ends));
    List<String> narrow =
        ends.stream()
            .filter(joint -> !found.isPaired(joint) && !choice.hasTimber(joint))
            .map(Joint::mark)
            .toList();
    return new Fixings(Map.of(), Map.of(), Map.of(), found.gussets(), narrow);
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
    return new Fixings(
        fixings.through(), fixings.steel(), found, fixings.gussets(), fixings.narrow());
  }

  private Fixings withGussets(Fixings fixings) {
    List<Joint> unheld =
        joints.stream().filter(fixings::isUnheld).filter(Joint::mayHaveGusset).toList();
    return unheld.isEmpty()
        ? fixings
        : fixings.with(new GussetChoice(gussetPlan(), bodies, room(fixings), false).of(unheld));
  }

  private GussetRoom room(Fixings fixings) {
    Stream<Solid> steel =
        fixings.steel().values().stream()
            .flatMap(one -> one.places().stream())
            .flatMap(place -> place.legs().stream());
    Stream<Solid> plywood = fixings.gussets().stream().map(one -> one.fit().taken());
    FastenerRoom fasteners = new FastenerRoom(fasteners(fixings));
    return new GussetRoom(wall, facets, support, bodies, Stream.concat(steel, plywood), fasteners);
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
}
