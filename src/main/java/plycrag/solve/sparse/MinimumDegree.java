package plycrag.solve.sparse;

import java.util.BitSet;
import java.util.List;

/**
 * An order of elimination that fills little: next is always who has the fewest neighbours left, by
 * W. Tinney and J. Walker (Proc. IEEE 55, 1967), scheme 2. Of equals the first.
 */
final class MinimumDegree {
  private final int[] sizes;
  private final BitSet[] neighbours;
  private final int[] degrees;

  private MinimumDegree(int[] sizes, List<int[]> cliques) {
    this.sizes = sizes;
    this.neighbours = new BitSet[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      neighbours[i] = new BitSet(sizes.length);
    }
    cliques.forEach(this::join);
    this.degrees = new int[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      degrees[i] = degree(i);
    }
  }

  /** The order of so many parts of some sizes, those of each clique being neighbours. */
  static int[] order(int[] sizes, List<int[]> cliques) {
    return new MinimumDegree(sizes, cliques).order();
  }

  private void join(int[] clique) {
    for (int one : clique) {
      for (int other : clique) {
        neighbours[one].set(other);
      }
    }
  }

  private int degree(int part) {
    int degree = 0;
    BitSet its = neighbours[part];
    for (int other = its.nextSetBit(0); other >= 0; other = its.nextSetBit(other + 1)) {
      degree += sizes[other];
    }
    return degree;
  }

  private int[] order() {
    int[] order = new int[sizes.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = next();
      eliminate(order[i]);
    }
    return order;
  }

  private int next() {
    int next = -1;
    for (int part = 0; part < sizes.length; part++) {
      if (neighbours[part] != null && (next < 0 || degrees[part] < degrees[next])) {
        next = part;
      }
    }
    return next;
  }

  private void eliminate(int part) {
    BitSet its = neighbours[part];
    its.clear(part);
    neighbours[part] = null;
    for (int other = its.nextSetBit(0); other >= 0; other = its.nextSetBit(other + 1)) {
      neighbours[other].or(its);
      neighbours[other].clear(part);
    }
    for (int other = its.nextSetBit(0); other >= 0; other = its.nextSetBit(other + 1)) {
      degrees[other] = degree(other);
    }
  }
}
