package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;

/**
 * The order in which the members of a frame are joined: from its lowest plate on always one that
 * meets what lies there already, plates before studs and studs before what goes between them.
 */
final class FrameOrder {
  private final List<Joint> joints;
  private final List<Member> waiting;
  private final Set<String> placed = new HashSet<>();

  private FrameOrder(FacetLayout facet) {
    this.joints = facet.joints();
    this.waiting = new ArrayList<>(facet.members());
    waiting.sort(
        Comparator.comparing(Member::role)
            .thenComparing(member -> member.shadow().getMinY())
            .thenComparing(member -> member.shadow().getMinX()));
  }

  /** The marks of a facet's members, in order. */
  static List<String> of(FacetLayout facet) {
    return new FrameOrder(facet).marks();
  }

  private List<String> marks() {
    List<String> marks = new ArrayList<>();
    while (!waiting.isEmpty()) {
      Optional<Member> joined = waiting.stream().filter(this::isJoined).findFirst();
      Member next = joined.orElse(waiting.get(0));
      waiting.remove(next);
      placed.add(next.mark());
      marks.add(next.mark());
    }
    return marks;
  }

  private boolean isJoined(Member member) {
    return joints.stream()
        .anyMatch(
            joint ->
                (joint.first().equals(member.mark()) && placed.contains(joint.second()))
                    || (joint.second().equals(member.mark()) && placed.contains(joint.first())));
  }
}
