package plycrag.solve.guillotine;

/** Between millimetres and the whole micrometres that the search counts in. */
final class Sizes {
  /** 1 km in µm; twice that still is an int. */
  private static final double LARGEST = 1e9;

  private static final double SCALE = 1000;

  private Sizes() {}

  /** Whole µm. */
  static int micrometres(double millimetres) {
    return (int) Math.round(millimetres * SCALE);
  }

  /** Mm from whole µm. */
  static double millimetres(int micrometres) {
    return micrometres / SCALE;
  }

  static void requirePositive(double width, double height) {
    if (!isSize(width) || !isSize(height)) {
      throw new IllegalArgumentException("not a size in mm: " + width + " x " + height);
    }
  }

  private static boolean isSize(double value) {
    return value * SCALE >= 0.5 && value * SCALE <= LARGEST;
  }
}
