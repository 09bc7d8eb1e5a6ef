package plycrag.layout;

import java.util.EnumMap;
import java.util.Map;

/** Numbers the members of a wall, each role by itself, from facet to facet. */
final class MemberNumbers {
  private final Map<Role, Integer> last = new EnumMap<>(Role.class);

  /** The next mark of a role. */
  String next(Role role) {
    return role.letters() + last.merge(role, 1, Integer::sum);
  }
}
