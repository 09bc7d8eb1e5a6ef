package plycrag.layout.frame;

import org.locationtech.jts.geom.Point;

/**
 * Where two members are fixed to each other.
 *
 * @param mark {@code J1}, {@code J2}, … facet by facet
 * @param kind how they meet
 * @param first the mark of one member: at an end, the one that ends; at a fold, the lower one
 * @param second the mark of the other
 * @param place the middle of where they meet, in (u, v) of the first one's facet
 * @param length of the line along which they meet, mm
 */
public record Joint(
    String mark, Kind kind, String first, String second, Point place, double length) {

  /** How two members meet. */
  public enum Kind {
    /** One ends on the side of the other. */
    END("end on side"),
    /** Two lengths of one run meet end to end. */
    SPLICE("end to end"),
    /** Two lengths of a stud meet end to end, with a strap on each side. */
    STUD_SPLICE("end to end, both sides"),
    /** They lie side by side. */
    SIDE("side by side"),
    /** They belong to two facets and lie back to back in the plane that halves the fold. */
    FOLD("across the fold"),
    /** They belong to two facets and only their edges come near each other. */
    FOLD_EDGES("edge to edge at the fold"),
    /** They belong to two facets, of which the upper one swings on the lower one. */
    HINGE("hinged at the fold");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** Whether both members may lie flush under a rectangle of plywood. */
  public boolean mayHaveGusset() {
    return kind == Kind.END || kind == Kind.SPLICE || kind == Kind.STUD_SPLICE;
  }

  /** The member that screws go through, and along which their places are read. */
  public String through() {
    return kind == Kind.END ? second : first;
  }

  /** The one that they go into. */
  public String into() {
    return kind == Kind.END ? first : second;
  }

  /** The same joint under another mark. */
  Joint withMark(String other) {
    return new Joint(other, kind, first, second, place, length);
  }
}
