package plycrag.units;

/** What a bare number in a parameter file means, and what a tape reads. */
public enum LengthUnit {
  /** Millimetres; set out to 1 mm, holes are read off in centimetres. */
  MM("mm", "millimetres", 1.0, 1.0, 10.0),
  /** Inches; set out to 1/16 in, holes are read off in inches. */
  IN("in", "inches", 25.4, 25.4 / 16, 25.4);

  private final String word;
  private final String plural;
  private final double millimetres;
  private final double markingGrid;
  private final double tapeDivision;

  LengthUnit(
      String word, String plural, double millimetres, double markingGrid, double tapeDivision) {
    this.word = word;
    this.plural = plural;
    this.millimetres = millimetres;
    this.markingGrid = markingGrid;
    this.tapeDivision = tapeDivision;
  }

  /** The word for it in a parameter file. */
  public String word() {
    return word;
  }

  /** The word for it in a sentence. */
  public String plural() {
    return plural;
  }

  /** One unit in millimetres. */
  public double millimetres() {
    return millimetres;
  }

  /** The smallest step that is set out on the floor, in millimetres. */
  public double markingGrid() {
    return markingGrid;
  }

  /** The numbered division of a tape that names a hole, in millimetres. */
  public double tapeDivision() {
    return tapeDivision;
  }
}
