package plycrag.drawing.pen;

import java.util.List;

/** The scales of ISO 5455 that fit a view on a page; 1:n by its n. */
public final class Scale {
  private static final List<Integer> SCALES = List.of(1, 2, 5, 10, 20, 50, 100, 200, 500);

  /**
   * What is left for the view itself on A4 or Letter upright, beside its dimensions and words and
   * the page's running lines, mm.
   */
  private static final double WIDTH = 150;

  private static final double HEIGHT = 140;

  /** The same on the largest paper, A0 or E, lying. */
  private static final double LARGEST_WIDTH = 1000;

  private static final double LARGEST_HEIGHT = 640;

  private Scale() {}

  /** The largest scale at which a view of a size fits a page. */
  public static int fitting(double width, double height) {
    return largest(width, height, WIDTH, HEIGHT);
  }

  /** The same, but none smaller than 1 to a number where the largest paper has room for that. */
  public static int fitting(double width, double height, int smallest) {
    return Math.max(largest(width, height), Math.min(smallest, fitting(width, height)));
  }

  /** The largest scale at which a view of a size fits the largest paper. */
  public static int largest(double width, double height) {
    return largest(width, height, LARGEST_WIDTH, LARGEST_HEIGHT);
  }

  private static int largest(double width, double height, double across, double up) {
    return SCALES.stream()
        .filter(scale -> width <= across * scale && height <= up * scale)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(width + " x " + height + " mm"));
  }

  /**
   * The same, but larger where readings would stand closer than they can be printed; the view then
   * takes a larger page, of the largest paper at most.
   *
   * @param least distance between two readings, mm
   */
  public static int legible(double width, double height, double least) {
    int fitting = fitting(width, height);
    int legible =
        SCALES.stream()
            .filter(scale -> scale <= fitting && least >= LabelSpread.STEP * scale)
            .reduce((smaller, larger) -> larger)
            .orElse(Math.min(fitting, 10));
    return Math.max(legible, largest(width, height));
  }
}
