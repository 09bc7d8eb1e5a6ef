package plycrag.wall;

/**
 * How long a facet was told to be, and by which key.
 *
 * @param key that the file uses for it
 * @param length up the slope, mm
 */
public record ToldLength(Key key, double length) {
  /** What tells how long a facet is. */
  public enum Key {
    /** Its length up the slope. */
    LENGTH("length"),
    /** Its height, measured plumb. */
    VERTICAL_HEIGHT("vertical-height"),
    /** Its corners. */
    OUTLINE("outline");

    private final String word;

    Key(String word) {
      this.word = word;
    }

    /** As a file has it. */
    public String word() {
      return word;
    }
  }

  /** The same key with another length. */
  public ToldLength with(double other) {
    return new ToldLength(key, other);
  }
}
