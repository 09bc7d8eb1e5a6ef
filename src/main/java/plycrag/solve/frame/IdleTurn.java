package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plycrag.geometry.Tolerance;
import plycrag.solve.sparse.SparsePattern;
import plycrag.solve.sparse.SymmetricEigen;

/**
 * A way in which a node can turn without anything noticing, since all that meets there is pinned.
 * It is no mechanism unless a moment asks for it.
 */
final class IdleTurn {
  private final int[] freedoms;
  private final double[] way;

  /** Of a node's rotations that are not held so much of each, together of length one. */
  private IdleTurn(int[] freedoms, double[] way) {
    this.freedoms = freedoms;
    this.way = way;
  }

  /** All of a frame of such entries, of whose freedoms some are held. */
  static List<IdleTurn> all(int nodes, SparsePattern pattern, double[] entries, boolean[] held) {
    List<IdleTurn> all = new ArrayList<>();
    for (int node = 0; node < nodes; node++) {
      int first = FreedomCount.OF_NODE * node;
      int[] free = IntStream.range(first + 3, first + 6).filter(i -> !held[i]).toArray();
      all.addAll(at(free, pattern, entries));
    }
    return all;
  }

  private static List<IdleTurn> at(int[] free, SparsePattern pattern, double[] entries) {
    double[][] block = new double[free.length][free.length];
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free.length; j++) {
        block[i][j] = pattern.entry(entries, free[i], free[j]);
      }
    }
    double stiff = trace(block);
    SymmetricEigen eigen = new SymmetricEigen(block);
    return IntStream.range(0, free.length)
        .filter(i -> eigen.value(i) <= Tolerance.VANISHING * stiff)
        .mapToObj(i -> new IdleTurn(free, eigen.vector(i)))
        .toList();
  }

  private static double trace(double[][] block) {
    return IntStream.range(0, block.length).mapToDouble(i -> block[i][i]).sum();
  }

  /** Lets entries resist it by so much, so that nothing turns where nothing asks for it. */
  void brake(SparsePattern pattern, double[] entries) {
    double stiff = 1;
    for (int freedom : freedoms) {
      stiff += pattern.entry(entries, freedom, freedom);
    }
    for (int i = 0; i < way.length; i++) {
      for (int j = 0; j < way.length; j++) {
        double value = stiff * way[i] * way[j];
        if (i == j || value != 0) {
          pattern.addAt(entries, freedoms[i], freedoms[j], value);
        }
      }
    }
  }

  /** The moment that asks for it, N mm. */
  double moment(double[] forces) {
    return IntStream.range(0, way.length).mapToDouble(i -> way[i] * forces[freedoms[i]]).sum();
  }

  /** It as a motion of so many freedoms. */
  double[] motion(int size) {
    double[] motion = new double[size];
    IntStream.range(0, way.length).forEach(i -> motion[freedoms[i]] = way[i]);
    return motion;
  }
}
