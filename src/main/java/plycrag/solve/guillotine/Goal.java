package plycrag.solve.guillotine;

/** What a search makes small. */
@FunctionalInterface
interface Goal {
  /** As much as fill squared counts beside the area left over: full sheets beside empty ones. */
  double FILL = 0.3;

  /**
   * The measure of a state, in sheets.
   *
   * @param left area of the items left over, kerfs included, µm²
   */
  double measure(Sheets sheets, long left);

  /** Nothing left over, and until then what is free gathered on few sheets. */
  static double room(Sheets sheets, long left) {
    double squares = 0;
    long area = 0;
    for (int sheet = 0; sheet < sheets.count(); sheet++) {
      double fill = sheets.fill(sheet);
      squares += fill * fill;
      area += sheets.area(sheet);
    }
    return (double) left * sheets.count() / area - FILL * squares;
  }

  /** The largest single offcut, with nothing left over. */
  static double offcut(Sheets sheets, long left, int kerf) {
    if (left > 0) {
      return Double.POSITIVE_INFINITY;
    }
    long largest = 0;
    for (int sheet = 0; sheet < sheets.count(); sheet++) {
      largest = Math.max(largest, FreeStrips.largest(sheets, sheet, kerf));
    }
    return -(double) largest / sheets.area(0);
  }
}
