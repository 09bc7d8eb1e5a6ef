package plycrag.files.pdf;

/**
 * How a line of the book is set.
 *
 * @param size of the font, mm; its capitals are 0.69 as high
 * @param bold whether it is drawn heavier, by a stroke around the letters; as wide as otherwise
 * @param leading from line to line, mm
 */
record Letters(double size, boolean bold, double leading) {
  static final Letters TITLE = new Letters(8.5, true, 10);
  static final Letters HEADING = new Letters(5.4, true, 7.2);
  static final Letters STRONG = new Letters(3.9, true, 5.4);
  static final Letters TEXT = new Letters(3.9, false, 5.4);

  /** Capitals of 2.5 mm, the least that is read at arm's length. */
  static final Letters TABLE = new Letters(3.65, false, 4.8);

  static final Letters TABLE_HEAD = new Letters(3.65, true, 4.8);

  /** From the top of a line to its letters' foot, mm: capitals stand in its middle. */
  double drop() {
    return leading / 2 + PdfFont.CAPITALS * size / 2;
  }

  /** How thick the stroke around bold letters is, mm. */
  double stroke() {
    return size * 0.035;
  }
}
