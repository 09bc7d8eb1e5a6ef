package plycrag.layout.sheets;

/** The two faces of a sheet. */
public enum SheetFace {
  /** The climbing side. */
  FRONT("front"),
  /** The frame side. */
  BACK("back");

  private final String word;

  SheetFace(String word) {
    this.word = word;
  }

  /** The word in file names and lists. */
  public String word() {
    return word;
  }
}
