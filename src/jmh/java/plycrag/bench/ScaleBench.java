package plycrag.bench;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Time against size: {@code .ci/bench-scale [PATTERN]}. For each benchmark a line {@code name size
 * ms} a size, and a last one with the exponent of the power of the size that fits best, by least
 * squares of the logarithms.
 */
public final class ScaleBench {
  private ScaleBench() {}

  /** Runs the benchmarks whose names match. */
  public static void main(String[] arguments) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include(arguments.length > 0 ? arguments[0] : "Scale")
            .mode(Mode.SingleShotTime)
            .timeUnit(TimeUnit.MILLISECONDS)
            .warmupIterations(1)
            .measurementIterations(2)
            .forks(1)
            .jvmArgs("-Xmx3g")
            .verbosity(VerboseMode.SILENT)
            .build();
    times(new Runner(options).run()).forEach(ScaleBench::print);
  }

  private static Map<String, TreeMap<Integer, Double>> times(Collection<RunResult> results) {
    Map<String, TreeMap<Integer, Double>> times = new TreeMap<>();
    for (RunResult result : results) {
      int size = Integer.parseInt(result.getParams().getParam("size"));
      times
          .computeIfAbsent(result.getPrimaryResult().getLabel(), name -> new TreeMap<>())
          .put(size, result.getPrimaryResult().getScore());
    }
    return times;
  }

  private static void print(String name, TreeMap<Integer, Double> times) {
    times.forEach(
        (size, time) ->
            System.out.println(String.format(Locale.ROOT, "%s %d %.0f", name, size, time)));
    System.out.println(String.format(Locale.ROOT, "%s exponent %.2f", name, exponent(times)));
  }

  private static double exponent(TreeMap<Integer, Double> times) {
    List<Double> sizes = times.keySet().stream().map(size -> Math.log(size)).toList();
    List<Double> spans = times.values().stream().map(Math::log).toList();
    double size = mean(sizes);
    double span = mean(spans);
    double both = 0;
    double square = 0;
    for (int at = 0; at < sizes.size(); at++) {
      both += (sizes.get(at) - size) * (spans.get(at) - span);
      square += (sizes.get(at) - size) * (sizes.get(at) - size);
    }
    return both / square;
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(value -> value).average().orElseThrow();
  }
}
