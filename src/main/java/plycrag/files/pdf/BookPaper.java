package plycrag.files.pdf;

/**
 * The paper of a book, with what of it the text may fill.
 *
 * @param width mm
 * @param height mm
 * @param head room for a stamp above the text, mm
 * @param foot room for the foot below it, mm
 */
record BookPaper(double width, double height, double head, double foot) {
  /** At every side, mm: no printer leaves more white. */
  static final double MARGIN = 12;

  double left() {
    return MARGIN;
  }

  double right() {
    return width - MARGIN;
  }

  double top() {
    return height - MARGIN - head;
  }

  double low() {
    return MARGIN + foot;
  }

  /** How wide the text is. */
  double column() {
    return right() - left();
  }

  /** How high the text is. */
  double page() {
    return top() - low();
  }
}
