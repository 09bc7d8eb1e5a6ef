package plycrag.solve.fixing;

import plycrag.geometry.Vector3;

/**
 * Two members that are to be held together.
 *
 * @param first the one that ends there
 * @param second the one that it ends on, or that goes on from there
 */
public record MemberPair(TimberBody first, TimberBody second) {

  /** The way in which what holds both pulls one of them when they draw apart, of length one. */
  Vector3 pullOn(TimberBody one) {
    Vector3 toSecond = first.toward(second);
    return one.equals(first) ? toSecond : toSecond.times(-1);
  }
}
