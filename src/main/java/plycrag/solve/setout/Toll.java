package plycrag.solve.setout;

/** What a way along the axis costs, packed into one number that is compared as a whole. */
interface Toll {
  /** The cost with one more line that moves. */
  long line(long cost, int move);

  /** What a dropped line adds. */
  long drop();

  /** What a member adds. */
  long member();

  /** Lines dropped, then the largest move. */
  record Worst() implements Toll {
    private static final int BITS = 32;
    private static final long MOVE = (1L << BITS) - 1;

    @Override
    public long line(long cost, int move) {
      return (cost & ~MOVE) | Math.max(cost & MOVE, Math.abs(move));
    }

    @Override
    public long drop() {
      return 1L << BITS;
    }

    @Override
    public long member() {
      return 0;
    }

    /** The cost of so many lines dropped and such a largest move. */
    static long of(int dropped, int move) {
      return ((long) dropped << BITS) | move;
    }

    /** The lines dropped of a cost. */
    static int dropped(long cost) {
      return (int) (cost >> BITS);
    }

    /** The largest move of a cost. */
    static int move(long cost) {
      return (int) (cost & MOVE);
    }
  }

  /**
   * Lines dropped, then members, then the sum of moves, then their sum with signs.
   *
   * @param bound greatest move
   * @param move what a step adds
   * @param member what a member adds
   * @param drop what a dropped line adds
   */
  record Sum(int bound, long move, long member, long drop) implements Toll {

    /**
     * For so many lines and members at most.
     *
     * @throws ArithmeticException if they are too many to be counted in one number
     */
    static Sum of(int bound, int lines, int members) {
      long move = 2L * bound * lines + 1;
      long member = Math.multiplyExact(move, (long) bound * lines + 1);
      long drop = Math.multiplyExact(member, members + 1L);
      if (Math.multiplyExact(drop, lines + 1L) >= MemberSite.NEVER) {
        throw new ArithmeticException("too many lines between two fixed members: " + lines);
      }
      return new Sum(bound, move, member, drop);
    }

    /** The lines dropped of a cost. */
    int dropped(long cost) {
      return (int) (cost / drop);
    }

    /** The members of a cost. */
    int members(long cost) {
      return (int) (cost % drop / member);
    }

    @Override
    public long line(long cost, int by) {
      return cost + Math.abs(by) * move + by + bound;
    }
  }
}
