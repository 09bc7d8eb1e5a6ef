package plycrag.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.layout.fixing.LapScrews;

/**
 * Where blocks on a plate leave no room for brackets, they hold what stands between them: a member
 * that ends on another is held by those that lie along the other, are screwed to it, and end on the
 * member with a bracket each.
 */
final class BlockHold {
  private final Fixings fixings;
  private final Map<String, List<String>> beside = new LinkedHashMap<>();
  private final Map<String, List<String>> endingOn = new LinkedHashMap<>();

  /**
   * Gathers who holds whom.
   *
   * @param fixings of the joints, without blocks
   */
  BlockHold(List<Joint> joints, Fixings fixings) {
    this.fixings = fixings;
    joints.forEach(this::add);
  }

  private void add(Joint joint) {
    if (joint.kind() == Joint.Kind.SIDE
        && fixings.throughOf(joint).filter(LapScrews::holds).isPresent()) {
      put(beside, joint.first(), joint.second());
      put(beside, joint.second(), joint.first());
    }
    if (joint.kind() == Joint.Kind.END && !fixings.isUnheld(joint)) {
      put(endingOn, joint.second(), joint.first());
    }
  }

  private static void put(Map<String, List<String>> map, String key, String value) {
    map.computeIfAbsent(key, unseen -> new ArrayList<>()).add(value);
  }

  /** The marks of the blocks that hold a joint; none where there are none. */
  List<String> of(Joint joint) {
    if (joint.kind() != Joint.Kind.END) {
      return List.of();
    }
    List<String> along = beside.getOrDefault(joint.second(), List.of());
    return endingOn.getOrDefault(joint.first(), List.of()).stream()
        .filter(along::contains)
        .toList();
  }
}
