package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.support.Anchor;
import plycrag.solve.frame.Acting;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Bar;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameSupport;
import plycrag.solve.frame.Freedom;
import plycrag.wall.Wall;

/**
 * What holds a wall to floor and building: anchors, and the floor, which only pushes up. Where
 * nothing is anchored, one place is kept along and across the wall and the furthest from it across,
 * so that friction need not be known; it holds no two parts together.
 */
final class GroundSupports {
  /** What stands no higher above the floor rests on it, mm. */
  private static final double RESTS = 2;

  private final Wall wall;
  private final Map<String, AxisStations> members;
  private final List<FrameSupport> supports = new ArrayList<>();
  private final Map<String, FrameNode> anchors = new LinkedHashMap<>();
  private final List<FrameNode> floor = new ArrayList<>();
  private final List<Bar> bars = new ArrayList<>();
  private final Map<String, String> edges = new LinkedHashMap<>();

  GroundSupports(Wall wall, Map<String, AxisStations> members) {
    this.wall = wall;
    this.members = members;
  }

  /** The stations of anchors, which come before all others. */
  void anchor(List<Anchor> all) {
    for (Anchor anchor : all) {
      FrameNode node = members.get(anchor.member()).heldAt(anchor.place());
      boolean isNew = !anchors.containsValue(node);
      anchors.put(anchor.mark(), node);
      if (isNew) {
        supports.addAll(FrameSupport.pinned(node));
        keepFromRolling(anchor, node);
      }
    }
  }

  /**
   * A member that lies flat against the building does not roll about a line of anchors: an edge of
   * its face presses, and the anchor pulls as much. Whatever presses, one bar at one edge stands
   * for it.
   */
  private void keepFromRolling(Anchor anchor, FrameNode node) {
    MemberAxis axis = members.get(anchor.member()).axis();
    Vector3 middle = axis.at(axis.foot(anchor.place()));
    Vector3 off = middle.minus(anchor.place());
    if (off.length() < RESTS || Math.abs(off.unit().dot(axis.way())) > LEANS) {
      return;
    }
    Vector3 outward = off.unit();
    Vector3 beside = axis.way().cross(outward).unit();
    double half = Math.abs(beside.dot(axis.across())) > LEANS ? axis.breadth() : axis.depth();
    Vector3 edge = beside.times(half / 2);
    FrameNode ground =
        new FrameNode(
            "building at " + anchor.mark(), anchor.place().plus(edge).minus(outward.times(FAR)));
    Attachment pressed = new Attachment(node, anchor.place().plus(edge).minus(node.place()));
    String name = "edge at " + anchor.mark();
    edges.put(anchor.mark(), name);
    bars.add(new Bar(name, pressed, Attachment.at(ground), STIFFNESS, Acting.BOTH_WAYS));
    supports.addAll(FrameSupport.fixed(ground));
  }

  /** Of a bar that stands for an edge that presses: its length, mm, and E A, N. */
  private static final double FAR = 100;

  private static final double STIFFNESS = 1e7;

  /** A cosine that tells ways along from ways across. */
  private static final double LEANS = 0.7;

  /** What stands for edges that press. */
  List<Bar> bars() {
    return bars;
  }

  /** The bar of each anchor that has one, by its mark. */
  Map<String, String> edges() {
    return edges;
  }

  /** The ends of what lies on the floor, which are stations too. */
  void reachEnds() {
    members.values().stream().filter(this::lies).forEach(one -> ends(one));
  }

  private static void ends(AxisStations member) {
    member.near(0);
    member.near(member.axis().length());
  }

  private boolean lies(AxisStations member) {
    return member.axis().isLevel() && rests(member.axis());
  }

  private boolean rests(MemberAxis axis) {
    return height(axis.body().near()) < RESTS || height(axis.body().far()) < RESTS;
  }

  private double height(List<Vector3> corners) {
    return corners.stream().mapToDouble(wall.floor()::heightOver).min().orElseThrow();
  }

  /** The floor under all stations of what lies on it, and under the feet of what stands on it. */
  void stand() {
    for (AxisStations member : members.values()) {
      if (lies(member)) {
        new TreeSet<>(member.all().keySet()).forEach(at -> push(member.all().get(at)));
      } else if (rests(member.axis())) {
        foot(member);
      }
    }
    if (anchors.isEmpty() && !floor.isEmpty()) {
      steady();
      members.values().stream()
          .filter(member -> lies(member) && member.axis().runsStraight())
          .forEach(this::keepFlat);
    }
  }

  /** What lies flat on the floor does not roll; what stands on it must not need it to. */
  private void keepFlat(AxisStations member) {
    boolean isAlongX = Math.abs(member.axis().way().x()) > LEANS;
    supports.addAll(
        FrameSupport.held(member.near(0).node(), isAlongX ? Freedom.ABOUT_X : Freedom.ABOUT_Y));
  }

  private void foot(AxisStations member) {
    MemberAxis axis = member.axis();
    double along = axis.start().z() < axis.end().z() ? 0 : axis.length();
    member.find(along).ifPresent(station -> push(station.node()));
  }

  private void push(FrameNode node) {
    if (!anchors.containsValue(node)) {
      floor.add(node);
      supports.add(FrameSupport.contact(node, Freedom.ALONG_Z));
    }
  }

  private void steady() {
    Comparator<FrameNode> byBack = Comparator.comparingDouble(node -> node.place().y());
    double back = floor.stream().min(byBack).orElseThrow().place().y();
    List<FrameNode> rear =
        floor.stream()
            .filter(node -> Tolerance.atMost(node.place().y(), back + RESTS))
            .sorted(Comparator.comparingDouble(node -> node.place().x()))
            .toList();
    FrameNode kept = rear.get(0);
    supports.addAll(FrameSupport.held(kept, Freedom.ALONG_X, Freedom.ALONG_Y));
    floor.stream()
        .filter(node -> !node.equals(kept))
        .max(Comparator.comparingDouble(node -> across(kept, node, back)))
        .ifPresent(other -> supports.addAll(FrameSupport.held(other, Freedom.ALONG_Y)));
  }

  /** How far another place is from one, those at the back before all others. */
  private static double across(FrameNode kept, FrameNode other, double back) {
    double behind = Tolerance.atMost(other.place().y(), back + RESTS) ? 1e6 : 0;
    return behind + Math.abs(other.place().x() - kept.place().x());
  }

  List<FrameSupport> supports() {
    return supports;
  }

  /** Where each anchor holds, by its mark. */
  Map<String, FrameNode> anchors() {
    return anchors;
  }

  /** Where the wall stands on the floor. */
  List<FrameNode> floor() {
    return floor;
  }
}
