package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.GussetPlan;
import plycrag.solve.fixing.LapPlan;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelPlan;
import plycrag.solve.fixing.ThroughFastener;
import plycrag.solve.fixing.TimberBody;
import plycrag.units.LengthUnit;
import plycrag.wall.JointFasteners;
import plycrag.wall.ScrewReach;
import plycrag.wall.Wall;

/**
 * What holds each joint: where the screws between members side by side and the bolts across folds
 * are, and which bracket, strap or hinge it takes; where none of the catalogue does, members beside
 * it or a gusset.
 *
 * @param through screws and bolts through both members, by the mark of the joint
 * @param steel by the mark of the joint
 * @param others the marks of members beside a joint that hold it, by its mark
 * @param gussets in the order of their joints
 */
public record Fixings(
    Map<String, LapScrews> through,
    Map<String, SteelChoice> steel,
    Map<String, List<String>> others,
    List<Gusset> gussets) {
  /** No piece of the catalogue reaches further from the joint, mm. */
  private static final double AROUND = 200;

  /** Keeps the order of the joints. */
  public Fixings {
    through = new LinkedHashMap<>(through);
    steel = new LinkedHashMap<>(steel);
    others = new LinkedHashMap<>(others);
    gussets = List.copyOf(gussets);
  }

  /** The screws between members side by side, or the bolts across a fold; empty for others. */
  public Optional<LapScrews> throughOf(Joint joint) {
    return Optional.ofNullable(through.get(joint.mark()));
  }

  /** The bracket, strap or hinge of a joint; empty for those that take none. */
  public Optional<SteelChoice> steelOf(Joint joint) {
    return Optional.ofNullable(steel.get(joint.mark()));
  }

  /** The gusset that holds a joint; empty for those that none does. */
  public Optional<Gusset> gussetOf(Joint joint) {
    return gussets.stream().filter(one -> one.joints().contains(joint.mark())).findFirst();
  }

  /** The marks of the members beside a joint that hold it; none where none do or need to. */
  public List<String> othersOf(Joint joint) {
    return others.getOrDefault(joint.mark(), List.of());
  }

  /** Whether it would take a bracket, a strap or a hinge, and nothing holds it. */
  public boolean isUnheld(Joint joint) {
    return isWithoutSteel(joint) && othersOf(joint).isEmpty() && gussetOf(joint).isEmpty();
  }

  private boolean isWithoutSteel(Joint joint) {
    return steelOf(joint).filter(choice -> choice.fit().isEmpty()).isPresent();
  }

  public static Fixings of(Wall wall, List<FacetLayout> facets, Optional<WallSupport> support) {
    List<TimberBody> bodies = bodies(wall, facets, support);
    Finder finder = new Finder(wall, bodies);
    List<Joint> joints =
        Stream.concat(
                facets.stream().flatMap(facet -> facet.joints().stream()),
                support.stream().flatMap(one -> one.joints().stream()))
            .toList();
    Fixings fixings =
        new Fixings(
            each(joints, finder::through), each(joints, finder::steel), Map.of(), List.of());
    return fixings.withOthers(joints).withGussets(joints, wall, facets, bodies);
  }

  private Fixings withOthers(List<Joint> joints) {
    HeldByOthers hold = new HeldByOthers(joints, this);
    Map<String, List<String>> found = new LinkedHashMap<>();
    joints.stream()
        .filter(this::isUnheld)
        .forEach(joint -> found.put(joint.mark(), hold.of(joint)));
    return new Fixings(through, steel, found, gussets);
  }

  private Fixings withGussets(
      List<Joint> joints, Wall wall, List<FacetLayout> facets, List<TimberBody> bodies) {
    List<Joint> unheld =
        joints.stream().filter(this::isUnheld).filter(Joint::mayHaveGusset).toList();
    if (unheld.isEmpty()) {
      return this;
    }
    GussetRoom room =
        new GussetRoom(
            wall, facets, bodies, steel.values().stream().flatMap(one -> one.taken().stream()));
    return new Fixings(
        through, steel, others, new GussetChoice(gussetPlan(wall), bodies, room).of(unheld));
  }

  private static GussetPlan gussetPlan(Wall wall) {
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

  /** Finds what holds one joint after the other. */
  private static final class Finder {
    private final Wall wall;
    private final JointFasteners joints;
    private final Map<String, TimberBody> byMark = new LinkedHashMap<>();
    private final SpatialIndex<TimberBody> index;

    Finder(Wall wall, List<TimberBody> bodies) {
      this.wall = wall;
      this.joints = wall.joints();
      this.index = new SpatialIndex<>(bodies, TimberBody::box);
      bodies.forEach(body -> byMark.put(body.mark(), body));
    }

    Optional<LapScrews> through(Joint joint) {
      return switch (joint.kind()) {
        case SIDE -> screws().of(first(joint), second(joint), others(joint));
        case FOLD -> bolts().of(first(joint), second(joint), others(joint));
        case END, SPLICE, STUD_SPLICE, FOLD_EDGES, HINGE -> Optional.empty();
      };
    }

    Optional<SteelChoice> steel(Joint joint) {
      return switch (joint.kind()) {
        case SIDE, FOLD -> Optional.empty();
        case END -> Optional.of(onCorner(joint));
        case SPLICE, STUD_SPLICE -> Optional.of(onFlush(joint));
        case FOLD_EDGES ->
            Optional.of(plan(Shape.ANGLE).onEdges(first(joint), second(joint), others(joint)));
        case HINGE -> Optional.of(onBreadth());
      };
    }

    private LapPlan screws() {
      double reached = wall.screws().length() - wall.sheet().thickness();
      return new LapPlan(
          ThroughFastener.SCREW,
          joints.screws().diameter(),
          joints.screws().spacing(),
          reached,
          wall.tape());
    }

    private LapPlan bolts() {
      return new LapPlan(
          ThroughFastener.BOLT,
          joints.bolts().diameter(),
          joints.bolts().spacing(),
          0,
          wall.tape());
    }

    private SteelPlan plan(Shape shape) {
      return new SteelPlan(
          shape,
          joints.bracketScrews(),
          wall.tape().unit() == LengthUnit.IN,
          ScrewReach.DEPTH_IN_DIAMETERS,
          ScrewReach.FAR_SIDE);
    }

    /** A bracket; where no corner takes one, straps over what lies flush. */
    private SteelChoice onCorner(Joint joint) {
      SteelChoice bracket = plan(Shape.ANGLE).onCorner(first(joint), second(joint), others(joint));
      SteelChoice straps = bracket.fit().isPresent() ? bracket : onFlush(joint);
      return straps.fit().isPresent() ? straps : bracket;
    }

    private SteelChoice onFlush(Joint joint) {
      return plan(Shape.STRAP).onFlush(first(joint), second(joint), others(joint));
    }

    /** Leaves lie on the sheets, over a plate each. */
    private SteelChoice onBreadth() {
      return plan(Shape.HINGE)
          .onBreadth(wall.frame().breadth(), wall.frame().depth(), wall.sheet().thickness());
    }

    private TimberBody first(Joint joint) {
      return byMark.get(joint.first());
    }

    private TimberBody second(Joint joint) {
      return byMark.get(joint.second());
    }

    private List<TimberBody> others(Joint joint) {
      Envelope box = first(joint).box();
      box.expandBy(AROUND);
      Envelope near = box.intersection(around(second(joint)));
      return index.near(near, 0).stream()
          .filter(body -> !body.mark().equals(joint.first()))
          .filter(body -> !body.mark().equals(joint.second()))
          .toList();
    }

    private static Envelope around(TimberBody body) {
      Envelope box = body.box();
      box.expandBy(AROUND);
      return box;
    }
  }
}
