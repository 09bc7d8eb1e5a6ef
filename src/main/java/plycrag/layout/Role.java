package plycrag.layout;

/** What a member of the frame is for. */
public enum Role {
  /** Runs up the slope. */
  STUD("stud", "ST", Axis.UP),
  /** Runs across the studs' ends. */
  PLATE("plate", "PL", Axis.ACROSS),
  /** Runs between two studs and backs an edge. */
  BLOCKING("blocking", "BL", Axis.ACROSS);

  private final String word;
  private final String letters;
  private final Axis axis;

  Role(String word, String letters, Axis axis) {
    this.word = word;
    this.letters = letters;
    this.axis = axis;
  }

  /** The trade's word. */
  public String word() {
    return word;
  }

  /** What its marks begin with. */
  public String letters() {
    return letters;
  }

  /** The way it runs. */
  public Axis axis() {
    return axis;
  }
}
