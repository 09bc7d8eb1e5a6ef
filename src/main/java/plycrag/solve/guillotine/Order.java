package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Orders in which items are put in: the largest first, by a measure that is drawn and blurred. */
final class Order {
  /** Step of the blur, as a share of the measure. */
  private static final double BLUR = 0.15;

  private final GuillotineTask job;
  private final SplittableRandom random;

  Order(GuillotineTask job, SplittableRandom random) {
    this.job = job;
    this.random = random;
  }

  int[] draw(int[] items) {
    IntToDoubleFunction blurred = blurred(measure(random.nextInt(6)));
    double[] sizes = Arrays.stream(items).mapToDouble(blurred).toArray();
    return IntStream.range(0, items.length)
        .boxed()
        .sorted(Comparator.comparingDouble(place -> -sizes[place]))
        .mapToInt(place -> items[place])
        .toArray();
  }

  private IntToDoubleFunction measure(int which) {
    return switch (which) {
      case 0 -> job::area;
      case 1 -> item -> job.width(item, false);
      case 2 -> item -> job.height(item, false);
      case 3 -> item -> Math.max(job.width(item, false), job.height(item, false));
      case 4 -> item -> job.width(item, false) + job.height(item, false);
      default -> item -> random.nextDouble();
    };
  }

  private IntToDoubleFunction blurred(IntToDoubleFunction measure) {
    double blur = BLUR * random.nextInt(3);
    return item -> measure.applyAsDouble(item) * (1 + blur * (2 * random.nextDouble() - 1));
  }
}
