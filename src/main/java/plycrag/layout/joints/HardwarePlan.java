package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.catalog.FlatSteel;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Hardware.Kind;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.Tether;
import plycrag.layout.support.Tether.Task;
import plycrag.layout.support.WallSupport;
import plycrag.solve.fixing.SteelFit;
import plycrag.solve.fixing.SteelPlace;
import plycrag.solve.fixing.ThroughBolt;
import plycrag.solve.fixing.TimberBody;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Gathers the hardware of a wall: joint by joint, then gussets, then what holds to the building.
 */
public final class HardwarePlan {
  private final Wall wall;
  private final Fixings fixings;
  private final JointBodies bodies;
  private final AnchorBolts anchorBolts;
  private final List<FacetLayout> facets;
  private final Map<Kind, Integer> numbers = new EnumMap<>(Kind.class);
  private final List<Hardware> hardware = new ArrayList<>();

  private HardwarePlan(
      Wall wall, List<FacetLayout> facets, Optional<WallSupport> support, Fixings fixings) {
    this.wall = wall;
    this.fixings = fixings;
    this.bodies = new JointBodies(wall, fixings);
    List<TimberBody> timber = TimberBodies.of(wall, facets, support);
    this.anchorBolts = new AnchorBolts(wall, facets, support, timber);
    this.facets = facets;
  }

  /**
   * All hardware of a wall, each piece with a mark of its own.
   *
   * @param wall the wall
   * @param facets with their joints
   * @param support with its joints, anchors and tethers
   * @param fixings what holds the joints
   */
  public static List<Hardware> of(
      Wall wall, List<FacetLayout> facets, Optional<WallSupport> support, Fixings fixings) {
    HardwarePlan plan = new HardwarePlan(wall, facets, support, fixings);
    Stream.concat(
            facets.stream().flatMap(facet -> facet.joints().stream()),
            support.stream().flatMap(one -> one.joints().stream()))
        .forEach(plan::add);
    fixings.gussets().forEach(plan::add);
    support.ifPresent(one -> one.anchors().forEach(plan::add));
    support.ifPresent(one -> one.tethers().forEach(plan::add));
    return List.copyOf(plan.hardware);
  }

  private void add(Joint joint) {
    for (ThroughBolt bolt : bodies.bolts(joint)) {
      Rod shank = bolt.shank();
      add(Kind.BOLT, joint, shank.from(), shank.way(), new Hardware.Bolted(bolt));
    }
    for (Rod screw : bodies.screws(joint)) {
      add(Kind.SCREW, joint, screw.from(), screw.way(), new Hardware.Screwed(screw));
    }
    for (SteelPlace place : bodies.steel(joint)) {
      SteelFit fit = fixings.steelOf(joint).flatMap(choice -> choice.fit()).orElseThrow();
      add(
          kind(fit.steel().shape()),
          joint,
          place.middle(),
          place.outward(),
          new Hardware.Steel(fit, place));
    }
  }

  private static Kind kind(FlatSteel.Shape shape) {
    return switch (shape) {
      case ANGLE -> Kind.BRACKET;
      case STRAP -> Kind.STRAP;
      case HINGE -> Kind.HINGE;
    };
  }

  private void add(Kind kind, Joint joint, Vector3 place, Vector3 way, Hardware.Form form) {
    String mark = kind.letters() + numbers.merge(kind, 1, Integer::sum);
    List<String> members = List.of(joint.first(), joint.second());
    hardware.add(new Hardware(mark, kind, List.of(joint.mark()), members, place, way, form));
  }

  private void add(Gusset gusset) {
    Solid body = gusset.fit().body();
    Vector3 through = body.far().get(0).minus(body.near().get(0));
    Vector3 across = body.near().get(2).minus(body.near().get(0));
    hardware.add(
        new Hardware(
            gusset.mark(),
            Kind.GUSSET,
            gusset.joints(),
            gusset.members(),
            body.near().get(0).plus(across.times(0.5)),
            through.unit(),
            new Hardware.Plywood(gusset)));
  }

  private void add(Anchor anchor) {
    Hardware.Anchored anchored = anchorBolts.of(anchor);
    Rod shank = anchored.bolt().shank();
    hardware.add(
        new Hardware(
            anchor.mark(),
            Kind.ANCHOR,
            List.of(),
            List.of(anchor.member()),
            shank.from(),
            shank.way(),
            anchored));
  }

  /** From the building to where it holds the wall as it is laid out. */
  private void add(Tether tether) {
    List<FacetLayout> run = Facet.runs(facets, FacetLayout::facet).get(0);
    FacetLayout top = run.get(run.size() - 1);
    Vector3 held =
        top.facet().plane().toRoom(new Vector3(tether.u(), tether.v(), wall.frameBack()));
    hardware.add(
        new Hardware(
            tether.mark(),
            tether.task() == Task.LOCK ? Kind.LOCK : Kind.TETHER,
            List.of(),
            List.of(),
            tether.anchor(),
            held.minus(tether.anchor()).unit(),
            new Hardware.Tethered(tether)));
  }
}
