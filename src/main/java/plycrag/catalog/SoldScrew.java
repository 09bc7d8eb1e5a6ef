package plycrag.catalog;

/**
 * A screw as it is sold.
 *
 * @param use what it joins
 * @param diameter of the thread, mm
 * @param length under the head, or to its top where that is sunk, mm
 * @param head its shape, in words
 * @param drive the bit that turns it, in words
 * @param source where the sizes are published
 */
public record SoldScrew(
    Use use, double diameter, double length, String head, String drive, String source) {
  /** What a screw joins. */
  public enum Use {
    /** A sheet to timber. */
    SHEET,
    /** One member to another. */
    MEMBER,
    /** A bracket, a strap or a hinge to timber. */
    BRACKET
  }

  boolean isThick(double wanted) {
    return SoldSize.same(diameter, wanted);
  }

  boolean isLong(double wanted) {
    return SoldSize.same(length, wanted);
  }

  /** Whether its length lies within two limits, both allowed. */
  boolean isWithin(double least, double most) {
    return SoldSize.atLeast(length, least) && SoldSize.atLeast(most, length);
  }
}
