package plycrag.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Closed tours of TSPLIB's {@code EUC_2D} instances: {@code .ci/bench tour [--optima CSV]
 * FILE.tsp…}. A line of output: {@code name n length optimum ratio ms}.
 */
public final class TourBench {
  private TourBench() {}

  /** Exit code 2 after one message for a file that cannot be read. */
  public static void main(String[] arguments) {
    Benchmark benchmark = new Benchmark("tour [--optima CSV] FILE.tsp...", false, TourBench::line);
    System.exit(benchmark.run(System.out, System.err, arguments));
  }

  private static String line(Path file, Benchmark.Options options) throws IOException {
    TspInstance instance = TspInstance.read(file);
    // Warm: every instance is solved once untimed, so that what it needs is compiled, then timed.
    instance.solve();
    long start = System.nanoTime();
    int[] order = instance.solve();
    long milliseconds = (System.nanoTime() - start) / 1_000_000;
    if (!instance.isTour(order)) {
      throw new IllegalStateException(file + ": not every place once");
    }
    long length = instance.length(order);
    Optional<Long> optimum = Optima.find(file, "", options);
    return String.join(
        " ",
        Benchmark.name(file),
        String.valueOf(order.length),
        String.valueOf(length),
        optimum.map(String::valueOf).orElse("-"),
        optimum
            .map(least -> String.format(Locale.ROOT, "%.5f", (double) length / least))
            .orElse("-"),
        String.valueOf(milliseconds));
  }
}
