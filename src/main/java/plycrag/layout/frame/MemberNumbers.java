package plycrag.layout.frame;

import java.util.EnumMap;
import java.util.Map;

/** Numbers the members of a wall, each role by itself, from facet to facet. */
public final class MemberNumbers {
  private final Map<MemberRole, Integer> last = new EnumMap<>(MemberRole.class);

  /** The next mark of a role. */
  public String next(MemberRole role) {
    return role.letters() + last.merge(role, 1, Integer::sum);
  }
}
