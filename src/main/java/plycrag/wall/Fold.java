package plycrag.wall;

/**
 * Where a facet meets another, above, below or beside it.
 *
 * @param side the number of the side of the facet's boundary that lies on it
 * @param turn by how much the two faces are turned toward each other, degrees: above zero they
 *     enclose less than 180° on the climber's side
 * @param other the other facet, by name
 * @param place where the other one lies
 * @param length over how much of that side they meet, mm; nothing if they only should
 */
public record Fold(int side, double turn, String other, Place place, double length) {

  /** On which side of a facet another one lies. */
  public enum Place {
    /** It stands on the other. */
    BELOW,
    /** The other stands on it. */
    ABOVE,
    /** The other is on its left. */
    LEFT,
    /** The other is on its right. */
    RIGHT
  }

  /**
   * The angle of the plane that halves the fold, from square to either facet, degrees. Above zero
   * whatever ends in that plane is longer behind than in front.
   */
  public double bevel() {
    return turn / 2;
  }

  /** Whether it runs up between two walls. */
  public boolean isCorner() {
    return place == Place.LEFT || place == Place.RIGHT;
  }

  /**
   * Whether another facet's fold is this one, seen from there.
   *
   * @param own the facet that has this one, by name
   * @param others the facet that has that one
   */
  public boolean isSameAs(Fold back, String own, String others) {
    return other.equals(others) && back.other.equals(own) && length == back.length && length > 0;
  }
}
