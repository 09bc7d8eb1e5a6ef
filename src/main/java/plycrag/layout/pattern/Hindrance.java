package plycrag.layout.pattern;

import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * One kind of thing that an insert keeps clear of: the timber, the edge of its piece, the screws.
 *
 * <p>Where it forbids an insert is said once, by {@link #in}: things on the facet with the
 * distances to keep from them ({@link KeptOff}), or areas to stay inside ({@link KeptWithin}). From
 * that follow
 *
 * <ol>
 *   <li>what an insert at a place meets, and by how much it falls short, which decides what is
 *       moved, left out or reported;
 *   <li>what of an area is left to be scattered over;
 *   <li>which stretches no column or row may lie in.
 * </ol>
 *
 * <p>All kinds stand in {@link InsertHindrances}, and nothing else is to be told of a new one. A
 * kind is a value: it knows no wall, and two of one class are equal.
 *
 * <p>The words are what a person is told; a kind may have better ones of its own.
 */
public interface Hindrance {

  /** The name of its rule: lower case with hyphens, stable. */
  String name();

  /** What its rule sees to, in one sentence for a person. */
  String promise();

  /** Where it forbids inserts on a facet. */
  Keeping in(InsertSite site);

  /**
   * Whether it comes to the facet after the inserts have found their places, as what is set out
   * around them does. It then blocks and is judged, but no insert is set out against it.
   */
  default boolean comesLater() {
    return false;
  }

  /** Why an insert is left out, to follow "is left out: ". */
  default String reason(Obstacle obstacle) {
    return "its " + obstacle.part().word() + " would be too near to " + obstacle.mark();
  }

  /** How an insert stands to what it is too near to, without the distance required. */
  default String sentence(Insert insert, Obstacle obstacle, Tape tape) {
    return "the "
        + obstacle.part().word()
        + " of insert "
        + insert.mark()
        + " "
        + obstacle.measure().standing(obstacle.thing().words(), tape);
  }

  /** What to move, and by how much. */
  default String remedy(Insert insert, Obstacle obstacle, Facet facet, Tape tape) {
    return "move it away by " + tape.text(tape.snapUp(obstacle.measure().shortfall()));
  }
}
