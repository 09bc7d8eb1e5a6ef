package plycrag.drawing.pen;

/**
 * How much room a line of text takes, from the advance widths of Liberation Sans, which are those
 * of the other faces that the files name. Characters are put in classes, each as wide as its
 * widest, so that the room is never too small.
 */
public final class TextSize {
  /** Capitals' height in ems: 1409 of 2048 units. */
  private static final double CAPITALS = 1409.0 / 2048;

  private TextSize() {}

  /** The width of a line whose capitals have a height, mm. */
  public static double width(String text, double height) {
    return text.chars().mapToDouble(TextSize::advance).sum() * height / CAPITALS;
  }

  private static double advance(int letter) {
    if (" .,:;!'|ijl/".indexOf(letter) >= 0) {
      return 0.278;
    }
    if ("-()frtI\"".indexOf(letter) >= 0) {
      return 0.355;
    }
    if ("mwMW@%".indexOf(letter) >= 0) {
      return 1.015;
    }
    return Character.isUpperCase(letter) || letter > 126 ? 0.778 : 0.556;
  }
}
