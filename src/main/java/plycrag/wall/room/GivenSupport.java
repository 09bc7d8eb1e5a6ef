package plycrag.wall.room;

import java.util.List;
import java.util.Optional;
import plycrag.wall.buying.Section;

/**
 * What holds the face up.
 *
 * @param kind how
 * @param bay the greatest distance between supports along the wall, middle to middle, mm
 * @param behind how far the posts' or the building's face stands behind the hindmost of the frame,
 *     level, mm
 * @param front how far base rails reach in front of the wall's foot, mm; empty: as far as the wall
 * @param bracing what keeps it from swaying
 * @param fixing what ledgers are fixed to
 * @param hinge how a hinged facet moves and is held
 * @param timber what it is made of
 */
public record GivenSupport(
    Kind kind,
    double bay,
    double behind,
    Optional<Double> front,
    Bracing bracing,
    Fixing fixing,
    Hinge hinge,
    Timber timber) {

  /** How a wall is held up. */
  public enum Kind {
    /** By ties to a building's wall behind it. */
    FIXED,
    /** By its own posts on rails. */
    FREESTANDING,
    /** By hangers from the ceiling. */
    HUNG,
    /** It swings on its lower edge and is held by something that can be made longer. */
    HINGED
  }

  /** What keeps a support from swaying along the wall. */
  public enum Lateral {
    /** Slanting timber across the posts. */
    BRACES,
    /** Short slanting timber between the posts and a beam along their upper ends. */
    KNEE_BRACES,
    /** The sheets on the frame, down to a plate that is fixed. */
    SHEETS,
    /** Nothing. */
    NONE
  }

  /** What keeps posts square to what lies on them. */
  public enum Across {
    /** Slanting timber from the post's foot to the frame. */
    BRACES,
    /** Short slanting timber between the post and the tie. */
    KNEE_BRACES
  }

  /**
   * What keeps a support from swaying.
   *
   * @param lateral along the wall
   * @param across toward the wall and away from it, where it stands on posts
   * @param knee how far a knee brace reaches from the corner, along both of its sides, mm; less
   *     where there is no room for it
   */
  public record Bracing(Lateral lateral, Across across, double knee) {}

  /** What a ledger is fixed to. */
  public enum Base {
    /** The studs in a building's wall. */
    STUDS,
    /** A wall of solid masonry, more than one brick thick. */
    MASONRY,
    /** Concrete. */
    CONCRETE,
    /** A wall one brick thick. */
    SINGLE_SKIN,
    /** Posts of the wall's own, for a hinge that stands by itself. */
    POSTS
  }

  /**
   * Where anchors go.
   *
   * @param base what they go into
   * @param spacing the greatest distance between them in masonry and concrete, mm
   * @param firstStud where the first stud of the building stands, from the left of each wall as it
   *     was told, its middle, mm; behind a wall that is mirrored from its right
   * @param studSpacing from stud to stud of the building, mm
   */
  public record Fixing(Optional<Base> base, double spacing, double firstStud, double studSpacing) {}

  /**
   * How deep its timber is in the section across the wall, mm. All but ledgers is as thick as the
   * frame's, so that plywood lies flush over where it meets the frame.
   *
   * @param rail on the floor
   * @param post upright
   * @param tie of ties and hangers
   * @param brace of braces and knee braces
   * @param ledger how far it stands off the building, and its other side
   */
  public record Timber(double rail, double post, double tie, double brace, Section ledger) {
    /**
     * The sections that it asks for, some of which may be alike.
     *
     * @param breadth of all but ledgers, mm
     */
    public List<Section> sections(double breadth) {
      return List.of(
          new Section(breadth, rail),
          new Section(breadth, post),
          new Section(breadth, tie),
          new Section(breadth, brace),
          ledger);
    }
  }

  /** What holds a hinged facet at its angle. */
  public enum Hold {
    /** Timber or steel that is stiff. */
    STRUTS,
    /** Webbing. */
    STRAPS,
    /** Chains. */
    CHAINS,
    /** A hoist's rope. */
    HOIST
  }

  /**
   * How a hinged facet moves and is held.
   *
   * @param hold by what; beside each of it goes a chain or a strap that works by itself
   * @param angles the angles it is used at, degrees, ascending
   * @param anchorHeight where it is held on the building, above the floor, mm
   * @param attach where it is held on the facet, from its lower edge up the slope, mm; empty: near
   *     its upper edge
   */
  public record Hinge(
      Hold hold, List<Double> angles, Optional<Double> anchorHeight, Optional<Double> attach) {
    /** Copies the angles. */
    public Hinge {
      angles = List.copyOf(angles);
    }
  }

  /** Whether it stands under the lowest facet, and holds none above another support. */
  public boolean needsFoot() {
    return kind == Kind.FREESTANDING || kind == Kind.HINGED;
  }

  /** Whether a building's wall behind it holds it. */
  public boolean isOnWall() {
    return (kind == Kind.FIXED || kind == Kind.HINGED) && !hasPosts();
  }

  /** Whether the frame lies on a building's wall, without space behind it. */
  public boolean isFlat() {
    return kind == Kind.FIXED && behind == 0;
  }

  /** Whether it stands on posts of its own. */
  public boolean hasPosts() {
    return kind == Kind.FREESTANDING
        || (kind == Kind.HINGED && fixing.base().filter(base -> base == Base.POSTS).isPresent());
  }
}
