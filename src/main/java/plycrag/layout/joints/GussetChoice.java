package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.fixing.GussetPlan;
import plycrag.solve.fixing.MemberPair;
import plycrag.solve.fixing.TimberBody;

/**
 * Gussets for joints that nothing of steel holds: one for each, and one for several where theirs
 * would lie in each other's way.
 */
final class GussetChoice {
  private final GussetPlan plan;
  private final Map<String, TimberBody> members = new LinkedHashMap<>();
  private final GussetRoom room;

  /** Joints that one gusset holds. */
  private record Node(List<Joint> joints, GussetFit fit) {
    boolean sharesMember(Joint joint) {
      return fit.timbers().containsKey(joint.first()) || fit.timbers().containsKey(joint.second());
    }
  }

  GussetChoice(GussetPlan plan, List<TimberBody> bodies, GussetRoom room) {
    this.plan = plan;
    this.room = room;
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
    return IntStream.range(0, nodes.size())
        .mapToObj(at -> gusset("GU" + (at + 1), nodes.get(at)))
        .toList();
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

  private Gusset gusset(String mark, Node node) {
    List<String> joints = node.joints().stream().map(Joint::mark).toList();
    Solid body = node.fit().body();
    FloorAxes axes = room.floorAxes(node.fit().timbers().keySet());
    Vector3 way = axes.fromRoom(body.far().get(0)).minus(axes.fromRoom(body.near().get(0)));
    return new Gusset(mark, joints, Gusset.Side.of(way), node.fit());
  }

  /**
   * Makes one of the first two that would meet, or drops the later one where none holds all.
   *
   * @return whether there were two
   */
  private boolean join(List<Node> nodes) {
    for (int at = 0; at < nodes.size(); at++) {
      for (int later = at + 1; later < nodes.size(); later++) {
        Node one = nodes.get(at);
        Node other = nodes.get(later);
        if (one.fit().meets(other.fit())) {
          nodes.remove(later);
          nodes.set(at, node(both(one, other)).orElse(one));
          return true;
        }
      }
    }
    return false;
  }

  private static List<Joint> both(Node one, Node other) {
    return Stream.concat(one.joints().stream(), other.joints().stream()).toList();
  }

  private Optional<Node> node(List<Joint> joints) {
    List<MemberPair> meets =
        joints.stream()
            .map(joint -> new MemberPair(members.get(joint.first()), members.get(joint.second())))
            .toList();
    List<TimberBody> under =
        meets.stream().flatMap(meet -> Stream.of(meet.first(), meet.second())).toList();
    return plan.over(meets, box -> room.taken(box, under)).map(fit -> new Node(joints, fit));
  }
}
