package plycrag.layout.frame;

/** What a member of the frame is for. */
public enum MemberRole {
  /** Runs level along an edge, across the studs' ends. */
  PLATE("plate", "PL"),
  /** Runs along a slanting edge. */
  RAKE("rake", "RK"),
  /** Runs up the slope. */
  STUD("stud", "ST"),
  /** Runs up beside an opening. */
  TRIMMER("trimmer", "TR"),
  /** Runs level above or below an opening. */
  HEADER("header", "HD"),
  /** Runs between two studs and backs an edge. */
  BLOCKING("blocking", "BL"),
  /** Stands behind the wall on a rail. */
  POST("post", "PO"),
  /** Runs level from the frame to what holds it. */
  TIE("tie", "TI"),
  /** Lies on the floor under the frame and a post. */
  RAIL("base rail", "RA"),
  /** Stands on a base rail behind a stud and along it, cut level at its foot. */
  HEEL("heel", "HE"),
  /** Runs level along the feet of posts. */
  SILL("sill", "SL"),
  /** Slants between members of the support. */
  BRACE("brace", "BC"),
  /** Slants over the corner between a post and what is level. */
  KNEE("knee brace", "KB"),
  /** Runs level along the upper ends of posts. */
  BEAM("beam", "BM"),
  /** Lies flat along a building's wall or ceiling. */
  LEDGER("ledger", "LG"),
  /** Comes straight down from a ceiling. */
  HANGER("hanger", "HA");

  private final String word;
  private final String letters;

  MemberRole(String word, String letters) {
    this.word = word;
    this.letters = letters;
  }

  /** The trade's word. */
  public String word() {
    return word;
  }

  /** What its marks begin with. */
  public String letters() {
    return letters;
  }

  /** Whether it runs along the wall from station to station of a support. */
  public boolean runsAlong() {
    return this == LEDGER || this == BEAM || this == SILL;
  }

  /** Whether it runs up the slope. */
  public boolean isUpright() {
    return this == STUD || this == TRIMMER;
  }
}
