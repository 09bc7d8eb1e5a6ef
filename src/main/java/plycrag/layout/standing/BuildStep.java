package plycrag.layout.standing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.layout.frame.MemberRole;

/**
 * A step of building a wall, with all that goes in.
 *
 * @param work what is done
 * @param facet whose it is; empty where it is no facet's
 * @param role of a support's members; none for another step
 * @param parts what goes in, each in this step and in no other
 * @param heaviest the mass of the heaviest thing that is lifted in one piece, kg; 0 where nothing
 *     is
 */
public record BuildStep(
    Work work, String facet, Optional<MemberRole> role, Parts parts, double heaviest) {

  /** What is done in a step. */
  public enum Work {
    /** Timber is marked from rods, and cut. */
    MARK_OUT,
    /** The members of a facet's frame are joined flat on the floor. */
    BUILD_FLAT,
    /** They are joined where they stay. */
    BUILD_IN_PLACE,
    /** A frame that was built flat is brought to where it stays. */
    RAISE,
    /** Members of a support in one plane are joined flat on the floor, and stood. */
    SIDE_FRAMES,
    /** Members of the support are set. */
    SUPPORT,
    /** A frame that lies flat on the building's wall is fixed to it. */
    FIX,
    /** What holds a hinged facet is fixed. */
    HOLD,
    /** Sheets are finished, and inserts are put into them. */
    INSERTS,
    /** Pieces are screwed to a frame. */
    SHEETS,
    /** Edges are rounded, gaps covered, ends capped. */
    EDGES,
    /** Mats are laid. */
    MATS,
    /** The wall is looked over before anybody climbs. */
    FIRST_USE
  }

  /**
   * What goes into a wall in a step, by marks.
   *
   * @param members of frames and support
   * @param hardware likewise
   * @param pieces of sheets, and strips over gaps
   * @param inserts in the pieces
   * @param screws through the pieces
   */
  public record Parts(
      List<String> members,
      List<String> hardware,
      List<String> pieces,
      List<String> inserts,
      List<String> screws) {
    /** Of a step in which nothing goes in. */
    static final Parts NONE = new Parts(List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the marks. */
    public Parts {
      members = List.copyOf(members);
      hardware = List.copyOf(hardware);
      pieces = List.copyOf(pieces);
      inserts = List.copyOf(inserts);
      screws = List.copyOf(screws);
    }

    /** All of them. */
    public Stream<String> all() {
      return Stream.of(members, hardware, pieces, inserts, screws).flatMap(List::stream);
    }
  }

  /**
   * How many people lift what is heaviest, each so many kg; two at least where anything is lifted.
   */
  public int people(double perPerson) {
    return heaviest > 0 ? Math.max(2, (int) Math.ceil(heaviest / perPerson)) : 1;
  }
}
