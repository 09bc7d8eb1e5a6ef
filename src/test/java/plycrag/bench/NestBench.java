package plycrag.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plycrag.layout.nest.guillotine.Cutting;
import plycrag.layout.nest.guillotine.CuttingPlan;
import plycrag.layout.nest.guillotine.Guillotine;

/**
 * Guillotine nesting on equal sheets, no kerf, no trim: {@code nest [--rotate] [--optima CSV]
 * FILE…}.
 *
 * <p>A file holds the number of pieces, the sheet's width and height, and a line {@code width
 * height} a piece. A line of output: {@code name pieces sheets bound ms}. With {@code --optima},
 * whose columns begin {@code file,family,n,optimum}, a last line on the error stream counts how
 * many files are at the published value.
 */
public final class NestBench {
  private static final String FAMILY = "bwmv_guillotine_binpacking_";

  private final PrintStream out;
  private final PrintStream err;
  private final List<Path> files = new ArrayList<>();
  private final Map<String, Integer> optima = new TreeMap<>();
  private boolean rotate;
  private Path optimaFile;
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
    try {
      readArguments(arguments);
      readOptima();
      for (Path file : files) {
        solve(file);
      }
    } catch (IOException | IllegalArgumentException problem) {
      err.println("nest: " + problem.getMessage());
      return 2;
    }
    if (optimaFile != null) {
      err.println(met + " of " + known + " at the published value");
    }
    return 0;
  }

  private void readArguments(String... arguments) {
    for (int place = 0; place < arguments.length; place++) {
      switch (arguments[place]) {
        case "--rotate" -> rotate = true;
        case "--optima" -> optimaFile = Path.of(next(arguments, ++place));
        default -> files.add(Path.of(arguments[place]));
      }
    }
    if (files.isEmpty()) {
      throw new IllegalArgumentException("[--rotate] [--optima CSV] FILE...");
    }
  }

  private static String next(String[] arguments, int place) {
    if (place == arguments.length) {
      throw new IllegalArgumentException("--optima needs a file");
    }
    return arguments[place];
  }

  private void readOptima() throws IOException {
    if (optimaFile == null) {
      return;
    }
    String family = FAMILY + (rotate ? "rotated" : "oriented");
    for (String line : lines(optimaFile)) {
      String[] cells = line.split(",", -1);
      if (cells.length > 3 && cells[1].equals(family)) {
        optima.put(name(Path.of(cells[0])), Integer.valueOf(cells[3]));
      }
    }
  }

  private void solve(Path file) throws IOException {
    Instance instance = Instance.read(file, lines(file), rotate);
    long start = System.nanoTime();
    CuttingPlan plan = plan(file, instance);
    long milliseconds = (System.nanoTime() - start) / 1_000_000;
    int sheets = plan.sheets().size();
    int pieces = instance.items().size();
    out.println(name(file) + " " + pieces + " " + sheets + " " + plan.bound() + " " + milliseconds);
    Integer optimum = optima.get(name(file));
    if (optimum != null) {
      known++;
      met += sheets <= optimum ? 1 : 0;
    }
  }

  private static CuttingPlan plan(Path file, Instance instance) {
    try {
      return Guillotine.plan(instance.items(), List.of(instance.sheet()), new Cutting(0, 0));
    } catch (IllegalArgumentException problem) {
      throw new IllegalArgumentException(file + ": " + problem.getMessage(), problem);
    }
  }

  private static List<String> lines(Path file) throws IOException {
    try {
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new IOException("cannot read " + file, problem);
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().replaceFirst("\\.txt$", "");
  }
}
