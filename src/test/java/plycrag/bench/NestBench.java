package plycrag.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import plycrag.solve.guillotine.Cutting;
import plycrag.solve.guillotine.Guillotine;
import plycrag.solve.guillotine.GuillotinePlan;

/**
 * Guillotine nesting on equal sheets, no kerf, no trim: {@code .ci/bench nest [--rotate] [--optima
 * CSV] FILE…}.
 *
 * <p>A file holds the number of pieces, the sheet's width and height, and a line {@code width
 * height} a piece. A line of output: {@code name pieces sheets bound ms}. A last line on the error
 * stream counts how many files with a published value are at it.
 */
public final class NestBench {
  /** Looks for each item: some 4 s for 100 items where the bound is not met, none where it is. */
  private static final int LOOKS = 900_000;

  private final PrintStream out;
  private final PrintStream err;
  private int known;
  private int met;

  NestBench(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /** Runs the solver over the files named. */
  public static void main(String[] arguments) {
    System.exit(new NestBench(System.out, System.err).run(arguments));
  }

  /** 0, or 2 after a message. */
  int run(String... arguments) {
    String usage = "nest [--rotate] [--optima CSV] FILE...";
    int code = new Benchmark(usage, true, this::line).run(out, err, arguments);
    if (code == 0 && known > 0) {
      err.println(met + " of " + known + " at the published value");
    }
    return code;
  }

  private String line(Path file, Benchmark.Options options) throws IOException {
    Instance instance = Instance.read(file, Files.readAllLines(file), options.rotate());
    long start = System.nanoTime();
    GuillotinePlan plan = plan(file, instance);
    long milliseconds = (System.nanoTime() - start) / 1_000_000;
    int sheets = plan.sheets().size();
    Optional<Long> optimum =
        Optima.find(file, options.rotate() ? "_rotated" : "_oriented", options);
    known += optimum.isPresent() ? 1 : 0;
    met += optimum.isPresent() && sheets <= optimum.get() ? 1 : 0;
    int pieces = instance.items().size();
    return Benchmark.name(file)
        + " "
        + pieces
        + " "
        + sheets
        + " "
        + plan.bound()
        + " "
        + milliseconds;
  }

  private static GuillotinePlan plan(Path file, Instance instance) {
    try {
      return Guillotine.plan(instance.items(), List.of(instance.sheet()), new Cutting(0, 0), LOOKS);
    } catch (IllegalArgumentException problem) {
      throw new IllegalArgumentException(file + ": " + problem.getMessage(), problem);
    }
  }
}
