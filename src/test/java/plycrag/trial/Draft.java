package plycrag.trial;

import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import plycrag.units.Decimal;

/** A parameter file that is being written at random. */
final class Draft {
  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final int DIGITS = 3;

  private final Random random;
  private final boolean isWild;
  private final boolean isInInches;
  private final StringBuilder text = new StringBuilder();

  Draft(Random random, boolean isWild) {
    this.random = random;
    this.isWild = isWild;
    this.isInInches = chance(0.12);
  }

  String text() {
    return text.toString();
  }

  /** Whether anything within the allowed ranges may be asked for, rather than what people ask. */
  boolean isWild() {
    return isWild;
  }

  boolean isInInches() {
    return isInInches;
  }

  boolean chance(double part) {
    return random.nextDouble() < part;
  }

  int whole(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  /** A length between two, mm: people's are mostly round, wild ones lie off every grid. */
  double length(double least, double most) {
    double step = isWild ? (chance(0.5) ? 1 : 0.1) : (chance(0.7) ? 50 : 5);
    double length = least + random.nextDouble() * (most - least);
    double round = Math.round(length / step) * step;
    return Math.max(least, Math.min(most, round));
  }

  @SafeVarargs
  final <T> T of(T... values) {
    return values[random.nextInt(values.length)];
  }

  <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** A length as the file writes it. */
  String written(double millimetres) {
    return Decimal.of(isInInches ? millimetres / MILLIMETRES_PER_INCH : millimetres, DIGITS);
  }

  String corner(double across, double up) {
    return "[" + written(across) + ", " + written(up) + "]";
  }

  void line(String line) {
    text.append(line).append('\n');
  }

  void table(String name) {
    line("[" + name + "]");
  }

  void each(String name) {
    line("[[" + name + "]]");
  }

  void length(String key, double millimetres) {
    line(key + " = " + written(millimetres));
  }

  void number(String key, int number) {
    line(key + " = " + number);
  }

  void word(String key, String word) {
    line(key + " = \"" + word + "\"");
  }

  /** A line that is there in so many of a hundred files; of wild ones in a third. */
  void perhaps(double part, Runnable lines) {
    if (chance(isWild ? Math.max(part, 0.33) : part)) {
      lines.run();
    }
  }

  void perhapsLength(String key, double part, Supplier<Double> millimetres) {
    perhaps(part, () -> length(key, millimetres.get()));
  }
}
