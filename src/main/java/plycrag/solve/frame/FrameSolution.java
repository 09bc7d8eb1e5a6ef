package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Vector3;

/** A frame at rest under the loads of a case. All members are named as in its model. */
public final class FrameSolution implements FrameOutcome {
  private final Equations equations;
  private final HeldFrame frame;
  private final CaseLoads loads;
  private final double[] motions;
  private final double[] stressing;

  /** With the tensions that stiffen its elements, none in a first-order solution. */
  FrameSolution(
      Equations equations, HeldFrame frame, CaseLoads loads, double[] motions, double[] stressing) {
    this.equations = equations;
    this.frame = frame;
    this.loads = loads;
    this.motions = motions;
    this.stressing = stressing;
  }

  /** How a node moves, in the frame's axes. */
  public NodeMotion motion(FrameNode node) {
    return NodeMotion.of(motions, FreedomCount.OF_NODE * equations.number(node));
  }

  /** What supports do to each node that has any, in the frame's axes and in the order of nodes. */
  public Map<FrameNode, NodeForce> reactions() {
    double[] holding = frame.holding(motions, loads);
    double[] reactions = new double[holding.length];
    Map<FrameNode, NodeForce> all = new LinkedHashMap<>();
    boolean[] held = equations.held(frame.slack());
    for (FrameSupport support : equations.supports()) {
      int freedom = equations.freedom(support);
      if (!support.isRigid()) {
        reactions[freedom] = spring(support);
      } else if (held[freedom]) {
        reactions[freedom] = holding[freedom];
      }
    }
    for (FrameNode node : equations.supportedNodes()) {
      all.put(node, NodeForce.of(reactions, FreedomCount.OF_NODE * equations.number(node)));
    }
    return all;
  }

  private double spring(FrameSupport support) {
    return slack().contains(support.name()) ? 0 : equations.link(support.name()).axial(motions);
  }

  /** What goes on along a beam. */
  public MemberForces forces(String beam) {
    List<MemberForces.Stretch> stretches = new ArrayList<>();
    for (int number : equations.of(beam)) {
      stretches.add(stretch(equations.piece(number), loads.on(number), stressing[number]));
    }
    return new MemberForces(stretches);
  }

  private MemberForces.Stretch stretch(BeamPiece piece, PieceLoad load, double tension) {
    List<Span> spans = new ArrayList<>();
    double[] own = piece.ownMotions(motions);
    double[] forces = piece.ownForces(own, tension);
    double[] acting = load.onEnds(piece);
    for (int i = 0; i < forces.length; i++) {
      forces[i] -= acting[i];
    }
    List<PieceLoad.Action> actions = load.actions();
    double first = actions.isEmpty() ? piece.length() : actions.get(0).at();
    Span span =
        new Span(
            piece.from(),
            first,
            piece.beam().section(),
            load.line(),
            NodeMotion.vector(forces, 0).times(-1).minus(leaning(own, tension, piece.length())),
            NodeMotion.vector(forces, 3).times(-1),
            NodeMotion.of(own, 0));
    spans.add(span);
    for (int i = 0; i < actions.size(); i++) {
      double to = i + 1 < actions.size() ? actions.get(i + 1).at() : piece.length();
      PieceLoad.Action action = actions.get(i);
      span = span.next(action.force(), action.moment(), to - action.at());
      spans.add(span);
    }
    return new MemberForces.Stretch(spans, NodeMotion.of(own, FreedomCount.OF_NODE));
  }

  /** The part across a piece of a tension that leans as its ends have moved apart, N. */
  private static Vector3 leaning(double[] own, double tension, double length) {
    return new Vector3(0, own[7] - own[1], own[8] - own[2]).times(tension / length);
  }

  /** The force in a bar, tension positive, N; none in a slack one. */
  public double axial(String bar) {
    return slack().contains(bar) ? 0 : equations.link(bar).axial(motions);
  }

  /** The shear along the edges of a sheet, N/mm. */
  public double shearFlow(String panel) {
    return equations.panelStiffness(panel) * equations.link(panel).measure(motions);
  }

  /** The one-way bars and supports that do not act, by name. */
  public List<String> slack() {
    return frame.slack().stream().mapToObj(i -> equations.oneWays().get(i).name()).toList();
  }

  /**
   * When the frame would buckle if all axial forces of this solution grew alike; empty where none
   * of them pushes hard enough to. Beams should be cut into pieces for it: four in a member find
   * its own buckling 0.05 % too high, one 21 %.
   */
  public Optional<CriticalLoad> criticalLoad() {
    return new Buckling(equations, HeldFrame.unstressed(equations, frame.slack()))
        .under(equations.tensions(motions, frame.slack()));
  }
}
