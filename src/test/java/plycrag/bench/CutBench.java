package plycrag.bench;

import java.io.IOException;
import java.nio.file.Path;
import plycrag.solve.cutting.CuttingPlan;
import plycrag.solve.cutting.CuttingPlanner;
import plycrag.solve.cutting.CuttingTask;

/**
 * The cutting plan against published instances: {@code .ci/bench cut [--optima CSV] FILE…}.
 *
 * <p>A file holds the number of piece lengths, the stock length, and a line {@code length demand}
 * for each; there is no kerf. A line of output: {@code name items sticks optimum proven ms}.
 */
public final class CutBench {
  private static final long STEPS = 4_000_000_000L;

  private CutBench() {}

  /** Exit code 2 after one message for a file that cannot be read. */
  public static void main(String[] arguments) {
    Benchmark benchmark = new Benchmark("cut [--optima CSV] FILE...", false, CutBench::line);
    System.exit(benchmark.run(System.out, System.err, arguments));
  }

  private static String line(Path file, Benchmark.Options options) throws IOException {
    CuttingTask task = StockFile.read(file);
    long start = System.nanoTime();
    CuttingPlan plan = CuttingPlanner.plan(task, STEPS).orElseThrow();
    long milliseconds = (System.nanoTime() - start) / 1_000_000;
    return String.join(
        " ",
        Benchmark.name(file),
        Integer.toString(task.count()),
        Integer.toString(plan.patterns().stream().mapToInt(CuttingPlan.Cut::sticks).sum()),
        Optima.find(file, "", options).map(String::valueOf).orElse("-"),
        plan.cost() == plan.costBound() ? "yes" : "no",
        Long.toString(milliseconds));
  }
}
