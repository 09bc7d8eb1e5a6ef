package plycrag.drawing.pen;

/** The kinds of views there are, and where each is shown. */
public enum ViewKind {
  /** All parts drawn off each other, from before the wall. */
  EXPLODED_FRONT("Exploded view"),
  /** The same from behind. */
  EXPLODED_BACK("Exploded view"),
  /** What the wall takes of the floor. */
  PLAN("Plan"),
  /** The wall on its support, from before it. */
  STANDING_FRONT("Standing"),
  /** The same from behind. */
  STANDING_BACK("Standing"),
  /** One station of what holds a run up, square from the side. */
  SUPPORT_SIDE("Support"),
  /** All stations of a run, square from behind. */
  SUPPORT_BACK("Support"),
  /** A facet as it is climbed. */
  FACET_FRONT("Elevation"),
  /** A facet from behind, mirrored. */
  FACET_BACK("Elevation"),
  /** A facet's frame, laid flat. */
  FRAME("Framing elevation"),
  /** A run from the side. */
  SECTION("Section"),
  /** Where a facet stands on another. */
  FOLD("Detail"),
  /** Where two walls meet. */
  CORNER("Detail"),
  /** Gussets that are made alike. */
  GUSSET("Detail"),
  /** An insert in its hole, and a seam on its stud. */
  INSERT_AND_SEAM("Detail"),
  /** What is cut from which stick: whole in a file, on as many pages as it takes. */
  CUTTING_PLAN("Cutting diagram"),
  /** How a stock sheet comes apart. */
  SHEET_SAWING("Sheet cutting"),
  /** Where to drill a stock sheet. */
  SHEET("Sheet as it lies", Shown.ON_PAGES),
  /** A face of a stock sheet for a router shop, true size. */
  SHEET_CUT("Sheet to be cut", Shown.IN_CAD),
  /** A face of a stock sheet to lay under, true size. */
  SHEET_TEMPLATE("Sheet, true size", Shown.AS_PICTURE),
  /** A strip that guides a drill. */
  JIG("Jig", Shown.ON_PAGES);

  private final String word;
  private final Shown shown;

  private enum Shown {
    EVERYWHERE,
    ON_PAGES,
    IN_CAD,
    AS_PICTURE
  }

  ViewKind(String word) {
    this(word, Shown.EVERYWHERE);
  }

  ViewKind(String word, Shown shown) {
    this.word = word;
    this.shown = shown;
  }

  /** What kind of document it is, in the words of a title block. */
  public String word() {
    return word;
  }

  /** Whether a CAD program is to read it. */
  public boolean isForCad() {
    return shown == Shown.EVERYWHERE || shown == Shown.IN_CAD;
  }

  /** Whether it is a picture in a file of its own. */
  public boolean isPicture() {
    return shown == Shown.EVERYWHERE || shown == Shown.AS_PICTURE;
  }

  /** Whether it is on pages: in the printed set, and in the book where its reader needs it. */
  public boolean isOnPages() {
    return shown == Shown.EVERYWHERE || shown == Shown.ON_PAGES;
  }
}
