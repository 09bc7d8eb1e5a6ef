package plycrag.solve.cutting;

import java.util.List;

/**
 * What is to be cut, and from what. Lengths are whole numbers in any one unit.
 *
 * @param pieces what is wanted
 * @param stocks what there is to cut it from, all of it short enough to be carried home
 * @param kerf what a saw removes between two pieces; nothing after the last one
 * @param trim what is cut off each end of a stick before anything else
 */
public record CuttingTask(List<Piece> pieces, List<Stock> stocks, long kerf, long trim) {
  /** Copies the lists; rejects a negative kerf or trim. */
  public CuttingTask {
    pieces = List.copyOf(pieces);
    stocks = List.copyOf(stocks);
    if (kerf < 0 || trim < 0) {
      throw new IllegalArgumentException("kerf " + kerf + ", trim " + trim);
    }
  }

  /**
   * Equal pieces.
   *
   * @param length of each
   * @param demand how many, at least one
   */
  public record Piece(long length, int demand) {
    /** Rejects a piece without length or number. */
    public Piece {
      if (length < 1 || demand < 1) {
        throw new IllegalArgumentException(demand + " pieces of " + length);
      }
    }
  }

  /**
   * Equal sticks.
   *
   * @param length of each
   * @param price of each, in any unit; 0 for what is at hand
   * @param limit how many there are, {@link #UNLIMITED} if as many as are wanted
   */
  public record Stock(long length, long price, int limit) {
    /** As many as are wanted. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /** Rejects sticks without length. */
    public Stock {
      if (length < 1 || price < 0 || limit < 0) {
        throw new IllegalArgumentException(limit + " sticks of " + length + " at " + price);
      }
    }
  }

  /** What a stick has between its trimmed ends; negative where nothing remains. */
  public long usable(Stock stock) {
    return stock.length() - 2 * trim;
  }

  /** How many pieces are wanted. */
  public int count() {
    return pieces.stream().mapToInt(Piece::demand).sum();
  }
}
