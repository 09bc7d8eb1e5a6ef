package plycrag.solve.nest;

import java.util.Arrays;

/** By how much something is turned, counter-clockwise; exact, without an angle's rounding. */
public enum Turn {
  /** As it is given. */
  NONE(0, 1, 0),
  /** By 90°. */
  QUARTER(90, 0, 1),
  /** By 180°. */
  HALF(180, -1, 0),
  /** By 270°. */
  THREE_QUARTERS(270, 0, -1);

  private static final int ROUND = 360;

  private final int degrees;
  private final int cosine;
  private final int sine;

  Turn(int degrees, int cosine, int sine) {
    this.degrees = degrees;
    this.cosine = cosine;
    this.sine = sine;
  }

  /** Degrees, for people. */
  public int degrees() {
    return degrees;
  }

  /** Both, one after the other. */
  Turn then(Turn other) {
    int sum = (degrees + other.degrees) % ROUND;
    return Arrays.stream(values()).filter(turn -> turn.degrees == sum).findFirst().orElseThrow();
  }

  /** What undoes it. */
  Turn undone() {
    int back = (ROUND - degrees) % ROUND;
    return Arrays.stream(values()).filter(turn -> turn.degrees == back).findFirst().orElseThrow();
  }

  double x(double x, double y) {
    return cosine * x - sine * y;
  }

  double y(double x, double y) {
    return sine * x + cosine * y;
  }
}
