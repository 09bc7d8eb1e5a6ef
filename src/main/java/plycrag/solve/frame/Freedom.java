package plycrag.solve.frame;

import java.util.List;

/** One of the six ways in which a place can move; of forces, the force or moment that belongs. */
public enum Freedom {
  /** Along the first axis, mm or N. */
  ALONG_X(0),
  /** Along the second axis, mm or N. */
  ALONG_Y(1),
  /** Along the third axis, mm or N. */
  ALONG_Z(2),
  /** About the first axis, radians or N mm. */
  ABOUT_X(3),
  /** About the second axis, radians or N mm. */
  ABOUT_Y(4),
  /** About the third axis, radians or N mm. */
  ABOUT_Z(5);

  private static final List<Freedom> ALL = List.of(values());

  private final int number;

  Freedom(int number) {
    this.number = number;
  }

  /** From 0 for the first. */
  int number() {
    return number;
  }

  static Freedom of(int number) {
    return ALL.get(number);
  }

  /** Whether it is a rotation. */
  public boolean turns() {
    return number >= ABOUT_X.number;
  }
}
