package plycrag.files.pdf;

import plycrag.document.TextSize;

/**
 * How a line of the book is set.
 *
 * @param size of the font, mm; its capitals are 0.69 as high
 * @param bold whether it is drawn heavier, by a stroke around the letters; as wide as otherwise
 * @param leading from line to line, mm
 */
record TextStyle(double size, boolean bold, double leading) {
  static final TextStyle TITLE = new TextStyle(8.5, true, 10);
  static final TextStyle HEADING = new TextStyle(5.4, true, 7.2);
  static final TextStyle STRONG = new TextStyle(3.9, true, 5.4);
  static final TextStyle TEXT = new TextStyle(3.9, false, 5.4);

  /** A figure that is to be seen at once. */
  static final TextStyle FACT = new TextStyle(5, true, 6.4);

  /** Capitals of 2.5 mm, the least that is read at arm's length. */
  static final TextStyle TABLE = new TextStyle(3.65, false, 4.8);

  static final TextStyle TABLE_HEAD = new TextStyle(3.65, true, 4.8);

  /** From the top of a line to its letters' foot, mm: capitals stand in its middle. */
  double drop() {
    return leading / 2 + TextSize.CAPITALS * size / 2;
  }

  /** How thick the stroke around bold letters is, mm. */
  double stroke() {
    return size * 0.035;
  }
}
