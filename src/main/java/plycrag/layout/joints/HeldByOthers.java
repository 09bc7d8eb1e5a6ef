package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.LapScrews;

/**
 * Joints that have no room for a bracket and need none, since members beside them hold them.
 *
 * <ul>
 *   <li>Blocks on a plate hold the stud that ends on the plate between them: they are screwed to
 *       the one and end on the other with brackets.
 *   <li>Two members along a corner hold the plates that they are joined to, whose ends only come
 *       near each other.
 * </ul>
 */
final class HeldByOthers {
  private final Map<String, List<String>> beside = new LinkedHashMap<>();
  private final Map<String, List<String>> endingOn = new LinkedHashMap<>();
  private final Map<String, List<String>> joined = new LinkedHashMap<>();
  private final List<Joint> acrossFolds = new ArrayList<>();

  /**
   * Gathers who holds whom.
   *
   * @param fixings of the joints by themselves
   */
  HeldByOthers(List<Joint> joints, Fixings fixings) {
    for (Joint joint : joints) {
      switch (joint.kind()) {
        case SIDE -> addSide(joint, fixings);
        case END -> addEnd(joint, fixings);
        case FOLD, FOLD_EDGES -> addFold(joint, fixings);
        case SPLICE, STUD_SPLICE, HINGE -> {
          // none of them holds anything beside it
        }
      }
    }
  }

  private void addSide(Joint joint, Fixings fixings) {
    if (fixings.throughOf(joint).filter(LapScrews::holds).isPresent()) {
      put(beside, joint.first(), joint.second());
      put(beside, joint.second(), joint.first());
    }
  }

  private void addEnd(Joint joint, Fixings fixings) {
    if (!fixings.isUnheld(joint)) {
      put(endingOn, joint.second(), joint.first());
      put(joined, joint.second(), joint.first());
      put(joined, joint.first(), joint.second());
    }
  }

  private void addFold(Joint joint, Fixings fixings) {
    if (!fixings.isUnheld(joint)) {
      acrossFolds.add(joint);
    }
  }

  private static void put(Map<String, List<String>> map, String key, String value) {
    map.computeIfAbsent(key, unseen -> new ArrayList<>()).add(value);
  }

  /** The marks of those that hold a joint; none where there are none. */
  List<String> of(Joint joint) {
    return switch (joint.kind()) {
      case END -> blocks(joint);
      case FOLD_EDGES -> alongCorner(joint);
      case SIDE, FOLD, SPLICE, STUD_SPLICE, HINGE -> List.of();
    };
  }

  private List<String> blocks(Joint joint) {
    List<String> along = beside.getOrDefault(joint.second(), List.of());
    return endingOn.getOrDefault(joint.first(), List.of()).stream()
        .filter(along::contains)
        .toList();
  }

  private List<String> alongCorner(Joint joint) {
    List<String> first = joined.getOrDefault(joint.first(), List.of());
    List<String> second = joined.getOrDefault(joint.second(), List.of());
    return acrossFolds.stream()
        .filter(fold -> first.contains(fold.first()) && second.contains(fold.second()))
        .flatMap(fold -> Stream.of(fold.first(), fold.second()))
        .distinct()
        .toList();
  }
}
