package plycrag.stock.cutting;

/** Counts elementary steps, so that a search ends after the same work on every machine. */
final class Effort {
  private final long most;
  private long spent;

  Effort(long most) {
    this.most = most;
  }

  void spend(long steps) {
    spent += steps;
  }

  boolean isExhausted() {
    return spent >= most;
  }
}
