package plycrag.solve.cutting;

/** Counts elementary steps, so that a search ends after the same work on every machine. */
final class Effort {
  private final long most;
  private final Effort whole;
  private long spent;

  Effort(long most) {
    this(most, null);
  }

  private Effort(long most, Effort whole) {
    this.most = most;
    this.whole = whole;
  }

  /** A part of it, for one attempt; what the part spends is spent of the whole. */
  Effort part(long steps) {
    return new Effort(steps, this);
  }

  void spend(long steps) {
    spent += steps;
    if (whole != null) {
      whole.spend(steps);
    }
  }

  boolean isExhausted() {
    return spent >= most || (whole != null && whole.isExhausted());
  }
}
