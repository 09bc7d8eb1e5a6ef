package plycrag.stock;

import java.util.Optional;

/**
 * The number by which inch screws are called: 0.060 in and 0.013 in for each number (ASME B18.6.1).
 */
final class Gauge {
  private static final double INCH = 25.4;
  private static final double ZERO = 0.060;
  private static final double STEP = 0.013;
  private static final int LARGEST = 24;

  /** A thread that is off by more has no number, in numbers: 0.007 mm. */
  private static final double NEAR = 0.02;

  private Gauge() {}

  /** {@code No. 10} for 4.826 mm; empty for a thread between two numbers. */
  static Optional<String> name(double diameter) {
    double number = (diameter / INCH - ZERO) / STEP;
    long nearest = Math.round(number);
    boolean isNumber = nearest >= 0 && nearest <= LARGEST && Math.abs(number - nearest) <= NEAR;
    return isNumber ? Optional.of("No. " + nearest) : Optional.empty();
  }
}
