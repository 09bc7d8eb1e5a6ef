package plycrag.layout.support;

import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.wall.room.GivenSupport.Base;

/**
 * What fixes a member to the building.
 *
 * @param mark {@code AN1}, {@code AN2}, …
 * @param member the mark of what it holds
 * @param into what it goes into
 * @param place its middle on the building's face, in the room
 */
public record Anchor(String mark, String member, Into into, Vector3 place) {

  /** From the end of timber, or from what stands on it (common practice, no source), mm. */
  static final double FROM_END = 60;

  /** What an anchor goes into. */
  public enum Into {
    /** A stud of a building's wall. */
    STUD("a stud of the building"),
    /** Solid masonry. */
    MASONRY("masonry"),
    /** Concrete. */
    CONCRETE("concrete"),
    /** A wall one brick thick. */
    SINGLE_SKIN("a wall one brick thick"),
    /** A joist of the ceiling. */
    JOIST("a joist"),
    /** The floor. */
    FLOOR("the floor");

    private final String words;

    Into(String words) {
      this.words = words;
    }

    /**
     * What ledgers are fixed to; masonry where that is not told.
     *
     * @throws IllegalArgumentException for posts of the wall's own
     */
    static Into of(Optional<Base> base) {
      return switch (base.orElse(Base.MASONRY)) {
        case STUDS -> STUD;
        case MASONRY -> MASONRY;
        case CONCRETE -> CONCRETE;
        case SINGLE_SKIN -> SINGLE_SKIN;
        case POSTS -> throw new IllegalArgumentException("posts take no anchors");
      };
    }

    /** In words. */
    public String words() {
      return words;
    }
  }
}
