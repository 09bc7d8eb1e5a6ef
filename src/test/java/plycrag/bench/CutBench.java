package plycrag.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plycrag.stock.cutting.CuttingPlan;
import plycrag.stock.cutting.CuttingPlanner;
import plycrag.stock.cutting.CuttingTask;

/**
 * The cutting plan against published instances: {@code .ci/bench cut [--optima CSV] FILE…}.
 *
 * <p>A file holds the number of piece lengths, the stock length, and a line {@code length demand}
 * for each; there is no kerf. A line is printed for each file: {@code name items sticks optimum
 * proven ms}. The optima stand in a table with the columns file and optimum, by default in {@code
 * optima.csv} above the files' folder; a file that it does not name has {@code -}.
 */
public final class CutBench {
  private static final long STEPS = 4_000_000_000L;

  private CutBench() {}

  /** Exit code 2 for a file that cannot be read, after one message. */
  public static void main(String[] arguments) {
    List<String> files = new ArrayList<>(Arrays.asList(arguments));
    try {
      Path optima = null;
      if (files.size() > 1 && files.get(0).equals("--optima")) {
        optima = Path.of(files.get(1));
        files = files.subList(2, files.size());
      }
      if (files.isEmpty()) {
        throw new IllegalArgumentException("usage: cut [--optima CSV] FILE...");
      }
      for (String file : files) {
        System.out.println(line(Path.of(file), optima));
      }
    } catch (IOException | IllegalArgumentException fault) {
      System.err.println(fault.getMessage());
      System.exit(2);
    }
  }

  private static String line(Path file, Path optima) throws IOException {
    CuttingTask task = StockFile.read(file);
    long start = System.nanoTime();
    CuttingPlan plan = CuttingPlanner.plan(task, STEPS).orElseThrow();
    long milliseconds = (System.nanoTime() - start) / 1_000_000;
    String name = file.getFileName().toString();
    return String.join(
        " ",
        name.replaceFirst("\\.txt$", ""),
        Integer.toString(task.count()),
        Integer.toString(plan.sticks()),
        optima(file, optima).getOrDefault(name, "-"),
        plan.isCheapest() ? "yes" : "no",
        Long.toString(milliseconds));
  }

  private static Map<String, String> optima(Path file, Path given) throws IOException {
    Path table = given;
    if (table == null) {
      Path folder = file.toAbsolutePath().normalize().getParent();
      table = folder.resolveSibling("optima.csv");
      if (!Files.exists(table)) {
        return Map.of();
      }
    }
    List<String> lines = Files.readAllLines(table);
    List<String> columns = List.of(lines.get(0).split(",", -1));
    int name = columns.indexOf("file");
    int optimum = columns.indexOf("optimum");
    if (name < 0 || optimum < 0) {
      throw new IllegalArgumentException(table + ": the columns file and optimum are needed");
    }
    Map<String, String> optima = new TreeMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      optima.put(Path.of(cells[name]).getFileName().toString(), cells[optimum]);
    }
    return optima;
  }
}
