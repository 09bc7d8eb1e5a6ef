package plycrag.wall.room;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What holds a wall up: one support for all of it, and others for facets that have their own.
 *
 * @param usual of every facet without one of its own, if it is told
 * @param own by the facet's name, in the order of the file
 */
public record Supports(Optional<GivenSupport> usual, Map<String, GivenSupport> own) {
  /** A wall whose support is yours to design. */
  public static final Supports NONE = new Supports(Optional.empty(), Map.of());

  private static final String OWN = "[facet.support]";

  /** Copies the map in its order. */
  public Supports {
    own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
  }

  /** What holds a facet, by its name. */
  public Optional<GivenSupport> of(String facet) {
    return Optional.ofNullable(own.get(facet)).or(() -> usual);
  }

  /** The header of the table that tells what holds a facet. */
  public String table(String facet) {
    return own.containsKey(facet) ? OWN : "[support]";
  }

  /** Whether a header is that of a facet's own. */
  public static boolean isOwn(String table) {
    return table.equals(OWN);
  }

  /** All that are told, each once, the usual one first. */
  public List<GivenSupport> all() {
    Set<GivenSupport> all = new LinkedHashSet<>(usual.stream().toList());
    all.addAll(own.values());
    return new ArrayList<>(all);
  }

  /** Whether one of them is so. */
  public boolean any(Predicate<GivenSupport> predicate) {
    return all().stream().anyMatch(predicate);
  }

  /** Whether nothing is told. */
  public boolean isEmpty() {
    return usual.isEmpty() && own.isEmpty();
  }
}
