package plycrag.solve.guillotine;

/**
 * A rectangle to be cut.
 *
 * @param id names it in the result
 * @param width along x when it is not turned, mm
 * @param height along y when it is not turned, mm
 * @param mayTurn by 90°; false where the grain is respected
 */
public record Item(String id, double width, double height, boolean mayTurn) {

  /** Refuses sizes that are not above zero. */
  public Item {
    Sizes.requirePositive(width, height);
  }
}
