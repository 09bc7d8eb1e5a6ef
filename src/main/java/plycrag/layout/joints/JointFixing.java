package plycrag.layout.joints;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.frame.Joint;
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

/** What through both members or of steel holds one joint. */
final class JointFixing {
  /** No piece of the catalogue reaches further from the joint, mm. */
  private static final double AROUND = 200;

  private final Wall wall;
  private final JointFasteners joints;
  private final Map<String, TimberBody> byMark = new LinkedHashMap<>();
  private final SpatialIndex<TimberBody> index;

  JointFixing(Wall wall, List<TimberBody> bodies) {
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
