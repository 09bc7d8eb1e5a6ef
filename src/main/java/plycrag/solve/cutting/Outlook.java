package plycrag.solve.cutting;

/** The most that sizes from some kind on can be worth in some room, never too little. */
final class Outlook {
  private static final long MOST_CELLS = 4_000_000;

  private final DualBound bound;
  private final Packing packing;
  private final long[][] table;
  private final double[] density;

  Outlook(Packing packing, DualBound bound) {
    this.packing = packing;
    this.bound = bound;
    int kinds = packing.kinds();
    int capacity = packing.greatestCapacity();
    this.density = new double[kinds];
    for (int kind = kinds - 1; kind >= 0; kind--) {
      double own = (double) bound.price(kind) / packing.sizes()[kind];
      density[kind] = kind + 1 < kinds ? Math.max(own, density[kind + 1]) : own;
    }
    boolean isSmall = (long) kinds * (capacity + 1) <= MOST_CELLS;
    this.table = new long[isSmall ? kinds + 1 : 0][capacity + 1];
    for (int kind = kinds - 1; kind >= 0 && isSmall; kind--) {
      fill(kind);
    }
  }

  private void fill(int kind) {
    int size = packing.sizes()[kind];
    for (int room = 0; room < table[kind].length; room++) {
      long without = table[kind + 1][room];
      long with = room >= size ? table[kind][room - size] + bound.price(kind) : 0;
      table[kind][room] = Math.max(without, with);
    }
  }

  long most(int kind, int room) {
    return table.length > 0
        ? table[kind][room]
        : (long) (density[kind] * room * (1 + Rounding.PRODUCT)) + 1;
  }
}
