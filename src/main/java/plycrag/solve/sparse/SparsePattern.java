package plycrag.solve.sparse;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ejml.data.DMatrixSparseCSC;

/**
 * Where in a sparse matrix each entry of each element's matrix is added. Both halves of the matrix
 * are kept, in rows and columns by seat.
 */
public final class SparsePattern {
  private final Seating seating;
  private final int[] columns;
  private final int[] rows;
  private final int[] diagonal;
  private final int[][] places;

  /**
   * For elements of which each is a square matrix over its own unknowns, row by row.
   *
   * @param elements the numbers of their unknowns; one may come twice
   */
  public SparsePattern(Seating seating, List<int[]> elements) {
    this.seating = seating;
    int size = seating.size();
    LongStream alone = IntStream.range(0, size).mapToLong(i -> key(i, i));
    long[] keys =
        LongStream.concat(alone, elements.stream().flatMapToLong(one -> Arrays.stream(keys(one))))
            .sorted()
            .distinct()
            .toArray();
    this.rows = Arrays.stream(keys).mapToInt(key -> (int) (key % size)).toArray();
    this.columns = new int[size + 1];
    Arrays.stream(keys).forEach(key -> columns[(int) (key / size) + 1]++);
    for (int i = 0; i < size; i++) {
      columns[i + 1] += columns[i];
    }
    this.diagonal =
        IntStream.range(0, size).map(i -> Arrays.binarySearch(keys, key(i, i))).toArray();
    this.places =
        elements.stream()
            .map(
                one ->
                    Arrays.stream(keys(one))
                        .mapToInt(key -> Arrays.binarySearch(keys, key))
                        .toArray())
            .toArray(int[][]::new);
  }

  private long key(int row, int column) {
    return (long) column * seating.size() + row;
  }

  private long[] keys(int[] freedoms) {
    long[] keys = new long[freedoms.length * freedoms.length];
    for (int i = 0; i < keys.length; i++) {
      keys[i] =
          key(
              seating.seat(freedoms[i / freedoms.length]),
              seating.seat(freedoms[i % freedoms.length]));
    }
    return keys;
  }

  Seating seating() {
    return seating;
  }

  /** How many entries a matrix has. */
  public int entries() {
    return rows.length;
  }

  /** Adds a number of times an element's matrix to entries. */
  public void add(double[] entries, int element, double[] matrix, double factor) {
    int[] its = places[element];
    for (int i = 0; i < its.length; i++) {
      entries[its[i]] += factor * matrix[i];
    }
  }

  /** The entry where a freedom meets another that some element joins it to. */
  public double entry(double[] entries, int freedom, int other) {
    int column = seating.seat(other);
    int at = Arrays.binarySearch(rows, columns[column], columns[column + 1], seating.seat(freedom));
    return at < 0 ? 0 : entries[at];
  }

  /**
   * Adds where a freedom of a node meets another of the same node that some element joins it to.
   */
  public void addAt(double[] entries, int freedom, int other, double value) {
    int column = seating.seat(other);
    int at = Arrays.binarySearch(rows, columns[column], columns[column + 1], seating.seat(freedom));
    entries[at] += value;
  }

  /** Entries times motions, both by freedom. */
  public double[] times(double[] entries, double[] motions) {
    double[] seated = seating.seated(motions);
    double[] product = new double[motions.length];
    for (int column = 0; column < product.length; column++) {
      double motion = seated[column];
      if (motion != 0) {
        for (int i = columns[column]; i < columns[column + 1]; i++) {
          product[rows[i]] += entries[i] * motion;
        }
      }
    }
    return seating.risen(product);
  }

  /** Entries in which freedoms that are held meet nothing but themselves, by so much. */
  public double[] without(double[] entries, boolean[] held, double themselves) {
    boolean[] out = new boolean[held.length];
    for (int i = 0; i < held.length; i++) {
      out[seating.seat(i)] = held[i];
    }
    double[] rest = entries.clone();
    for (int column = 0; column < out.length; column++) {
      for (int i = columns[column]; i < columns[column + 1]; i++) {
        if (out[column] || out[rows[i]]) {
          rest[i] = rows[i] == column ? themselves : 0;
        }
      }
    }
    return rest;
  }

  /** Entries whose diagonal is raised by a part of itself. */
  double[] raised(double[] entries, double part) {
    double[] raised = entries.clone();
    for (int at : diagonal) {
      raised[at] *= 1 + part;
    }
    return raised;
  }

  /** Puts a value on the diagonal wherever there is nothing. */
  void fillDiagonal(double[] entries, double value) {
    for (int at : diagonal) {
      if (entries[at] == 0) {
        entries[at] = value;
      }
    }
  }

  /** The diagonal of entries, by seat. */
  double[] diagonal(double[] entries) {
    return Arrays.stream(diagonal).mapToDouble(at -> entries[at]).toArray();
  }

  /** A matrix of such entries, which it keeps. */
  DMatrixSparseCSC matrix(double[] entries) {
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(seating.size(), seating.size(), 0);
    matrix.col_idx = columns;
    matrix.nz_rows = rows;
    matrix.nz_values = entries;
    matrix.nz_length = rows.length;
    matrix.indicesSorted = true;
    return matrix;
  }
}
