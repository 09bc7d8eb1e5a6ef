package plycrag.wall.buying;

import java.util.Optional;

/**
 * What is to be bought, beyond its sizes.
 *
 * @param prices the price list's path from the parameter file's folder, if there is one
 * @param environment where the wall stands
 * @param timber what the framing timber is to be
 * @param sheets what the plywood is to be
 */
public record MaterialWishes(
    Optional<String> prices, Environment environment, TimberWish timber, SheetWish sheets) {

  /** Where the wall stands. */
  public enum Environment {
    /** Dry and heated. */
    INDOORS,
    /** Under a roof, at times damp. */
    DAMP,
    /** In the rain. */
    OUTDOORS
  }

  /**
   * What the timber is to be, in the merchant's words.
   *
   * @param grade for strength
   * @param treatment against rot
   * @param dryness how dry
   */
  public record TimberWish(String grade, String treatment, String dryness) {}

  /**
   * What the plywood is to be, in the merchant's words.
   *
   * @param bond of the glue
   * @param face grade of the face that is climbed on
   */
  public record SheetWish(String bond, String face) {}
}
