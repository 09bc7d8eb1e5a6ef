package plycrag.layout.joints;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Rod;
import plycrag.geometry.SpatialIndex;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.Crease;
import plycrag.solve.fixing.EndScrews;
import plycrag.solve.fixing.LapPlan;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelPlace;
import plycrag.solve.fixing.SteelPlan;
import plycrag.solve.fixing.ThroughFastener;
import plycrag.solve.fixing.TimberBody;
import plycrag.units.LengthUnit;
import plycrag.wall.Facet;
import plycrag.wall.JointFasteners;
import plycrag.wall.ScrewReach;
import plycrag.wall.Wall;

/** What through both members or of steel holds one joint. */
final class JointFixing {
  /** No piece of the catalogue reaches further from the joint, mm. */
  private static final double AROUND = 200;

  private final Wall wall;
  private final JointFasteners joints;
  private final Map<String, TimberBody> byMark = new LinkedHashMap<>();
  private final Map<String, Facet> facets = new LinkedHashMap<>();
  private final SpatialIndex<TimberBody> index;

  JointFixing(Wall wall, List<FacetLayout> layouts, List<TimberBody> bodies) {
    this.wall = wall;
    layouts.forEach(
        layout -> layout.members().forEach(member -> facets.put(member.mark(), layout.facet())));
    this.joints = wall.joints();
    this.index = new SpatialIndex<>(bodies, TimberBody::box);
    bodies.forEach(body -> byMark.put(body.mark(), body));
  }

  /** Screws or bolts through both members, clear of what is there already. */
  Optional<LapScrews> through(Joint joint, FastenerRoom taken) {
    return switch (joint.kind()) {
      case SIDE -> through(joint, screws(), taken);
      case FOLD -> through(joint, bolts(), taken);
      case END, SPLICE, STUD_SPLICE, FOLD_EDGES, HINGE -> Optional.empty();
    };
  }

  private Optional<LapScrews> through(Joint joint, LapPlan plan, FastenerRoom taken) {
    return plan.of(first(joint), second(joint), others(joint), taken.near(between(joint)));
  }

  /**
   * The steel of a joint.
   *
   * @param isFree whether nothing but timber is where a piece would be
   */
  Optional<SteelChoice> steel(Joint joint, Predicate<SteelPlace> isFree) {
    return switch (joint.kind()) {
      case SIDE, FOLD -> Optional.empty();
      case END -> Optional.of(onCorner(joint, isFree));
      case SPLICE -> Optional.of(onFlush(joint, isFree));
      case STUD_SPLICE -> Optional.of(onBothSides(joint, isFree));
      case FOLD_EDGES ->
          Optional.of(
              plan(Shape.ANGLE, isFree)
                  .onEdges(first(joint), second(joint), others(joint), count(joint)));
      case HINGE -> Optional.of(onCrease(joint, isFree));
    };
  }

  /** As many as keep the spacing of bolts, one near each end; two at least. */
  private int count(Joint joint) {
    return Math.max(2, (int) Tolerance.wholeUp(joint.length() / joints.bolts().spacing()) + 1);
  }

  /** Where a plate lies over a stud's end, screws through it, clear of what is there already. */
  Optional<LapScrews> intoEnd(Joint joint, FastenerRoom taken) {
    double length = joints.screws().length();
    return new EndScrews(joints.screws().diameter(), reached(), wall.tape())
        .of(
            second(joint),
            first(joint),
            line ->
                taken.isFree(
                    new Rod(line.from(), line.way(), length, joints.screws().diameter()).body()));
  }

  private double reached() {
    return wall.screws().length() - wall.sheet().thickness();
  }

  private LapPlan screws() {
    return new LapPlan(
        ThroughFastener.SCREW,
        joints.screws().diameter(),
        joints.screws().spacing(),
        reached(),
        wall.tape());
  }

  private LapPlan bolts() {
    return new LapPlan(
        ThroughFastener.BOLT, joints.bolts().diameter(), joints.bolts().spacing(), 0, wall.tape());
  }

  private SteelPlan plan(Shape shape, Predicate<SteelPlace> isFree) {
    return new SteelPlan(
        joints.steel().catalog(),
        shape,
        joints.bracketScrews(),
        wall.tape().unit() == LengthUnit.IN,
        ScrewReach.DEPTH_IN_DIAMETERS,
        ScrewReach.FAR_SIDE,
        isFree);
  }

  /** A bracket; where no corner takes one, straps over what lies flush, on both sides if it is. */
  private SteelChoice onCorner(Joint joint, Predicate<SteelPlace> isFree) {
    SteelChoice bracket =
        plan(Shape.ANGLE, isFree).onCorner(first(joint), second(joint), others(joint));
    return Stream.<Supplier<SteelChoice>>of(
            () -> bracket, () -> onBothSides(joint, isFree), () -> onFlush(joint, isFree))
        .map(Supplier::get)
        .filter(choice -> choice.fit().isPresent())
        .findFirst()
        .orElse(bracket);
  }

  private SteelChoice onFlush(Joint joint, Predicate<SteelPlace> isFree) {
    return plan(Shape.STRAP, isFree).onFlush(first(joint), second(joint), others(joint));
  }

  private SteelChoice onBothSides(Joint joint, Predicate<SteelPlace> isFree) {
    return plan(Shape.STRAP, isFree).onBothSides(first(joint), second(joint), others(joint));
  }

  /** Leaves lie on the sheets, over a plate each. */
  private SteelChoice onCrease(Joint joint, Predicate<SteelPlace> isFree) {
    return plan(Shape.HINGE, isFree)
        .onCrease(
            crease(joint),
            first(joint),
            second(joint),
            count(joint),
            wall.frame().breadth(),
            wall.frame().depth(),
            wall.sheet().thickness());
  }

  private Crease crease(Joint joint) {
    Facet lower = facets.get(joint.first());
    FacetPlane under = lower.plane();
    FacetPlane over = facets.get(joint.second()).plane();
    Vector3 middle = under.toRoom(new Vector3(joint.place().getX(), lower.length(), 0));
    return new Crease(
        middle,
        way(under, new Vector3(1, 0, 0)),
        joint.length(),
        way(under, new Vector3(0, -1, 0)),
        under.normal(),
        way(over, new Vector3(0, 1, 0)),
        over.normal());
  }

  private static Vector3 way(FacetPlane plane, Vector3 onFacet) {
    return plane.toRoom(onFacet).minus(plane.toRoom(new Vector3(0, 0, 0))).unit();
  }

  private TimberBody first(Joint joint) {
    return byMark.get(joint.first());
  }

  private TimberBody second(Joint joint) {
    return byMark.get(joint.second());
  }

  private List<TimberBody> others(Joint joint) {
    return index.near(between(joint), 0).stream()
        .filter(body -> !body.mark().equals(joint.first()))
        .filter(body -> !body.mark().equals(joint.second()))
        .toList();
  }

  private Envelope between(Joint joint) {
    return around(first(joint)).intersection(around(second(joint)));
  }

  private static Envelope around(TimberBody body) {
    Envelope box = body.box();
    box.expandBy(AROUND);
    return box;
  }
}
