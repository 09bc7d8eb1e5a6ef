package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.GussetPlan;
import plycrag.solve.fixing.MemberPair;
import plycrag.solve.fixing.RoomAround;
import plycrag.solve.fixing.TimberBody;

/**
 * Gussets for joints that nothing of steel holds: one for each, and one for several where theirs
 * would lie in each other's way.
 */
final class GussetChoice {
  private final GussetPlan plan;
  private final Map<String, TimberBody> members = new LinkedHashMap<>();
  private final GussetRoom room;
  private final boolean isPaired;

  /** Joints that one gusset holds, or one on either side. */
  private record Node(List<Joint> joints, List<GussetFit> fits) {
    boolean sharesMember(Joint joint) {
      Set<String> under = fits.get(0).timbers().keySet();
      return under.contains(joint.first()) || under.contains(joint.second());
    }

    boolean meets(Node other) {
      return fits.stream().anyMatch(one -> other.fits.stream().anyMatch(one::meets));
    }
  }

  /**
   * @param bodies of all timber
   * @param isPaired whether one lies on either side of what they hold
   */
  GussetChoice(GussetPlan plan, List<TimberBody> bodies, GussetRoom room, boolean isPaired) {
    this.plan = plan;
    this.room = room;
    this.isPaired = isPaired;
    bodies.forEach(body -> members.put(body.mark(), body));
  }

  /** The gussets of those joints that one can hold, in their order. */
  List<Gusset> of(List<Joint> joints) {
    List<Node> nodes = new ArrayList<>();
    List<Joint> left = new ArrayList<>();
    for (Joint joint : joints) {
      Optional<Node> node = node(List.of(joint));
      node.ifPresentOrElse(nodes::add, () -> left.add(joint));
    }
    left.forEach(joint -> addTo(nodes, joint));
    boolean joined = true;
    while (joined) {
      joined = join(nodes);
    }
    return nodes.stream().flatMap(this::gussets).toList();
  }

  /** Whether a joint's timber takes plywood on both sides, were nothing around. */
  boolean hasTimber(Joint joint) {
    MemberPair meet = new MemberPair(members.get(joint.first()), members.get(joint.second()));
    return plan.onBothSides(List.of(meet), RoomAround.EMPTY).isPresent();
  }

  /** Where members of others stand in the way of its own, a joint may share their gusset. */
  private void addTo(List<Node> nodes, Joint joint) {
    for (int at = 0; at < nodes.size(); at++) {
      Node one = nodes.get(at);
      Optional<Node> both = one.sharesMember(joint) ? node(with(one, joint)) : Optional.empty();
      if (both.isPresent()) {
        nodes.set(at, both.get());
        return;
      }
    }
  }

  private static List<Joint> with(Node node, Joint joint) {
    return Stream.concat(node.joints().stream(), Stream.of(joint)).toList();
  }

  /** Without a mark yet. */
  private Stream<Gusset> gussets(Node node) {
    List<String> joints = node.joints().stream().map(Joint::mark).toList();
    return node.fits().stream().map(fit -> new Gusset("", joints, side(fit), fit));
  }

  private Gusset.Side side(GussetFit fit) {
    Solid body = fit.body();
    FloorAxes axes = room.floorAxes(fit.timbers().keySet());
    return Gusset.Side.of(
        axes.fromRoom(body.far().get(0)).minus(axes.fromRoom(body.near().get(0))));
  }

  /**
   * Makes one of the first two that would meet; where none holds all, sets one or both out with
   * thinner screws, or drops the later one.
   *
   * @return whether there were two
   */
  private boolean join(List<Node> nodes) {
    for (int at = 0; at < nodes.size(); at++) {
      for (int later = at + 1; later < nodes.size(); later++) {
        Node one = nodes.get(at);
        Node other = nodes.get(later);
        if (one.meets(other)) {
          nodes.remove(later);
          Optional<Node> both = node(both(one, other));
          List<Node> apart = both.map(List::of).orElseGet(() -> apart(one, other));
          nodes.set(at, apart.get(0));
          nodes.addAll(later, apart.subList(1, apart.size()));
          return true;
        }
      }
    }
    return false;
  }

  /** Two that do not meet, with the thickest screws that do so; the first alone if none do. */
  private List<Node> apart(Node one, Node other) {
    List<Node> ones = thinner(one);
    List<Node> others = thinner(other);
    for (int thinner = 1; thinner < ones.size() + others.size(); thinner++) {
      for (int first = 0; first <= thinner; first++) {
        int second = thinner - first;
        if (first < ones.size()
            && second < others.size()
            && !ones.get(first).meets(others.get(second))) {
          return List.of(ones.get(first), others.get(second));
        }
      }
    }
    return List.of(one);
  }

  /** A node with thinner and thinner screws. */
  private List<Node> thinner(Node node) {
    List<Node> thinner = new ArrayList<>();
    Optional<Node> next = Optional.of(node);
    while (next.isPresent()) {
      thinner.add(next.get());
      double diameter = next.get().fits().get(0).diameter();
      next = node(node.joints(), plan.thinner(diameter));
    }
    return thinner;
  }

  private static List<Joint> both(Node one, Node other) {
    return Stream.concat(one.joints().stream(), other.joints().stream()).toList();
  }

  private Optional<Node> node(List<Joint> joints) {
    return node(joints, plan);
  }

  private Optional<Node> node(List<Joint> joints, GussetPlan with) {
    List<MemberPair> meets =
        joints.stream()
            .map(joint -> new MemberPair(members.get(joint.first()), members.get(joint.second())))
            .toList();
    List<TimberBody> under =
        meets.stream().flatMap(meet -> Stream.of(meet.first(), meet.second())).toList();
    RoomAround around = room.without(under);
    Optional<List<GussetFit>> fits =
        isPaired ? with.onBothSides(meets, around) : with.over(meets, around).map(List::of);
    return fits.map(found -> new Node(joints, found));
  }
}
