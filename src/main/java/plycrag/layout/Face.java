package plycrag.layout;

/** The two faces of a sheet. */
public enum Face {
  /** The climbing side. */
  FRONT("front"),
  /** The frame side. */
  BACK("back");

  private final String word;

  Face(String word) {
    this.word = word;
  }

  /** The word in file names and lists. */
  public String word() {
    return word;
  }
}
