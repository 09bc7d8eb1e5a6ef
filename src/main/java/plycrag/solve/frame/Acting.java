package plycrag.solve.frame;

/** Which signs of force a bar or a support takes. */
public enum Acting {
  /** Either. */
  BOTH_WAYS(0),
  /** A bar that only pulls; a support that only pushes the frame along its axis. */
  POSITIVE_ONLY(1),
  /** A bar that only pushes; a support that only pushes the frame against its axis. */
  NEGATIVE_ONLY(-1);

  private final int sign;

  Acting(int sign) {
    this.sign = sign;
  }

  /** The sign that it takes, or 0 for both. */
  int sign() {
    return sign;
  }
}
