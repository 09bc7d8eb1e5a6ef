package plycrag.solve.setout;

/**
 * Lines that lie between two members with none between them, looked at from the upper member: for
 * each line, and each place from which on it may lie, the least cost of it and all above.
 *
 * <p>Cost: the places of its lines within the bound.
 */
final class LineRun {
  private final LineReach field;
  private final Toll toll;
  private final MemberSite above;
  private final int first;
  private final int end;
  private final long[][] costs;

  /** The lines from {@code first} to before {@code end}, below a site. */
  LineRun(LineReach field, Toll toll, MemberSite above, int first, int end) {
    this.field = field;
    this.toll = toll;
    this.above = above;
    this.first = first;
    this.end = end;
    costs = new long[Math.max(0, end - first)][2 * field.bound + 1];
    for (int line = end - 1; line >= first; line--) {
      fill(line);
    }
  }

  private void fill(int line) {
    long kept = MemberSite.NEVER;
    for (int at = 2 * field.bound; at >= 0; at--) {
      kept = Math.min(kept, kept(line, at));
      long dropped = toll.drop() + cost(line + 1, field.lowest(line) + at);
      costs[line - first][at] = Math.min(kept, dropped);
    }
  }

  /** With the line at a place so far above its lowest one. */
  private long kept(int line, int at) {
    int place = field.lowest(line) + at;
    return place <= above.low && field.isFree(line, at)
        ? toll.line(cost(line + 1, place + field.apart), at - field.bound)
        : MemberSite.NEVER;
  }

  /** The least cost of a line and all above it if it may lie from a place on. */
  long cost(int line, int from) {
    long drops = 0;
    int at = line;
    while (at < end && from > field.highest(at)) {
      drops += toll.drop();
      at++;
    }
    return drops
        + (at == end
            ? above.cost(end, above.excess(end, from))
            : costs[at - first][Math.max(0, from - field.lowest(at))]);
  }

  /** Notes the cheapest places, of equal ones the lower; from where on the next line may lie. */
  int follow(int line, int from, Integer[] places) {
    int next = from;
    for (int at = line; at < end; at++) {
      places[at] = place(at, next);
      next = places[at] == null ? next : places[at] + field.apart;
    }
    return next;
  }

  private Integer place(int line, int from) {
    long least = cost(line, from);
    for (int at = Math.max(0, from - field.lowest(line)); at <= 2 * field.bound; at++) {
      if (kept(line, at) == least) {
        return field.lowest(line) + at;
      }
    }
    return null;
  }
}
