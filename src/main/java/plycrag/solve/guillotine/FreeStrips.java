package plycrag.solve.guillotine;

/**
 * What stays free beside and above a slice in its room. The strip that gives the larger offcut runs
 * the full length of the room; the other one the rest.
 *
 * @param right what is free to the right, kerf included, µm
 * @param top what is free above, kerf included, µm
 * @param rightFirst whether the right strip runs the full height
 */
record FreeStrips(int right, int top, boolean rightFirst) {

  /** Of a slice in its room, both with one kerf more than they measure. */
  static FreeStrips of(Slice slice, int width, int height, int kerf) {
    int right = width - slice.width;
    int top = height - slice.height;
    boolean rightFirst = offcut(right, height, kerf) >= offcut(width, top, kerf);
    return new FreeStrips(right, top, rightFirst);
  }

  /** Of the largest single offcut of a sheet, µm². */
  static long largest(Sheets sheets, int sheet, int kerf) {
    Slice slice = sheets.slice(sheet);
    int width = sheets.width(sheet);
    int height = sheets.height(sheet);
    return slice == null ? offcut(width, height, kerf) : largest(slice, width, height, kerf);
  }

  private static long largest(Slice slice, int width, int height, int kerf) {
    FreeStrips free = of(slice, width, height, kerf);
    int rightHeight = free.rightFirst ? height : slice.height;
    int topWidth = free.rightFirst ? slice.width : width;
    long own = Math.max(offcut(free.right, rightHeight, kerf), offcut(topWidth, free.top, kerf));
    return Math.max(own, within(slice, kerf));
  }

  private static long within(Slice slice, int kerf) {
    if (slice.isItem()) {
      return 0;
    }
    int nearWidth = slice.across ? slice.near.width : slice.width;
    int nearHeight = slice.across ? slice.height : slice.near.height;
    int farWidth = slice.across ? slice.far.width : slice.width;
    int farHeight = slice.across ? slice.height : slice.far.height;
    return Math.max(
        largest(slice.near, nearWidth, nearHeight, kerf),
        largest(slice.far, farWidth, farHeight, kerf));
  }

  private static long offcut(int width, int height, int kerf) {
    return (long) Math.max(0, width - kerf) * Math.max(0, height - kerf);
  }
}
