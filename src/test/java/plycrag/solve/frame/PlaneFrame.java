package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plycrag.geometry.Vector3;

/** Frames in the plane of x and y; every node is held in it. Units are the test's. */
final class PlaneFrame {
  static final Freedom[] IN_PLANE = {Freedom.ALONG_X, Freedom.ALONG_Y, Freedom.ABOUT_Z};

  private final Map<String, FrameNode> nodes = new LinkedHashMap<>();
  private final List<Beam> beams = new ArrayList<>();
  private final List<Bar> bars = new ArrayList<>();
  private final List<FrameSupport> supports = new ArrayList<>();

  static Vector3 vector(double x, double y, double z) {
    return new Vector3(x, y, z);
  }

  /** A section that bends in the plane, with as much the other way. */
  static BeamSection section(double elasticity, double area, double inertia) {
    return BeamSection.bending(elasticity, elasticity / 2.6, area, inertia, inertia, 2 * inertia);
  }

  PlaneFrame node(String name, double x, double y) {
    FrameNode node = new FrameNode(name, vector(x, y, 0));
    nodes.put(name, node);
    supports.addAll(FrameSupport.held(node, Freedom.ALONG_Z, Freedom.ABOUT_X, Freedom.ABOUT_Y));
    return this;
  }

  FrameNode node(String name) {
    return nodes.get(name);
  }

  PlaneFrame hold(String name, Freedom... freedoms) {
    supports.addAll(FrameSupport.held(nodes.get(name), freedoms));
    return this;
  }

  PlaneFrame pin(String name) {
    return hold(name, Freedom.ALONG_X, Freedom.ALONG_Y);
  }

  PlaneFrame fix(String name) {
    return hold(name, IN_PLANE);
  }

  PlaneFrame support(FrameSupport support) {
    supports.add(support);
    return this;
  }

  /** Named by its nodes' names. */
  PlaneFrame beam(String start, String end, BeamSection section) {
    return beam(BeamEnd.rigid(node(start)), BeamEnd.rigid(node(end)), section);
  }

  PlaneFrame beam(BeamEnd start, BeamEnd end, BeamSection section) {
    Vector3 along = end.at().place().minus(start.at().place());
    String name = start.at().node().name() + end.at().node().name();
    beams.add(new Beam(name, start, end, vector(-along.y(), along.x(), 0), section));
    return this;
  }

  /** Beams one after another through nodes. */
  PlaneFrame chain(BeamSection section, String... names) {
    for (int i = 1; i < names.length; i++) {
      beam(names[i - 1], names[i], section);
    }
    return this;
  }

  PlaneFrame bar(String start, String end, double stiffness, Acting acting) {
    bars.add(
        new Bar(
            start + end, Attachment.at(node(start)), Attachment.at(node(end)), stiffness, acting));
    return this;
  }

  PlaneFrame bars(double stiffness, String... names) {
    Arrays.stream(names)
        .map(name -> name.split("-", -1))
        .forEach(name -> bar(name[0], name[1], stiffness, Acting.BOTH_WAYS));
    return this;
  }

  static BeamEnd hinge(FrameNode node) {
    return new BeamEnd(Attachment.at(node), Set.of(Freedom.ABOUT_Z));
  }

  FrameModel model() {
    return new FrameModel(beams, bars, List.of(), supports);
  }

  FrameLoad push(String node, double x, double y) {
    return FrameLoad.on(node(node), vector(x, y, 0));
  }

  static LoadCase loads(FrameLoad... loads) {
    return new LoadCase("loads", List.of(loads));
  }

  FrameSolution solve(FrameLoad... loads) {
    return (FrameSolution) FrameAnalysis.of(model()).firstOrder(loads(loads));
  }

  FrameOutcome outcome(FrameLoad... loads) {
    return FrameAnalysis.of(model()).firstOrder(loads(loads));
  }

  /** x, y and turn of a node. */
  double[] motion(FrameSolution solution, String node) {
    NodeMotion motion = solution.motion(node(node));
    return new double[] {motion.translation().x(), motion.translation().y(), motion.rotation().z()};
  }

  /** Force along x and y, and moment. */
  double[] reaction(FrameSolution solution, String node) {
    NodeForce reaction = solution.reactions().get(node(node));
    return new double[] {reaction.force().x(), reaction.force().y(), reaction.moment().z()};
  }
}
