package plycrag.layout.frame;

import java.util.stream.Stream;

/**
 * What is cut off an end of a member, measured along it from how it ended.
 *
 * @param high whether off its upper or right end
 * @param left against the sheets at its left or lower long side, mm
 * @param right the same at its right or upper one, mm
 * @param behind further at its back, mm
 */
record EndLoss(boolean high, double left, double right, double behind) {
  /** The same all over an end, which then is cut as it was. */
  static Stream<EndLoss> square(double by) {
    return Stream.of(false, true).map(high -> new EndLoss(high, by, by, 0));
  }

  /**
   * Either end losing so much against the sheets at one of its sides or at both. At one only it is
   * cut across its breadth at 45° or less, which leaves timber beside the edge that it backs.
   */
  static Stream<EndLoss> upTo(double near, double breadth) {
    double other = Math.max(0, near - breadth);
    return Stream.of(false, true)
        .flatMap(
            high ->
                Stream.of(
                    new EndLoss(high, near, near, 0),
                    new EndLoss(high, near, other, 0),
                    new EndLoss(high, other, near, 0)))
        .distinct();
  }

  /** The same with more off the back. */
  EndLoss slanting(double more) {
    return new EndLoss(high, left, right, behind + more);
  }

  /** What a corner loses, mm. */
  double at(boolean isRight, boolean isBack) {
    return (isRight ? right : left) + (isBack ? behind : 0);
  }

  /** The greatest of it, mm. */
  double most() {
    return Math.max(left, right) + behind;
  }
}
