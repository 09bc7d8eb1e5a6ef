package plycrag.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Closed tours of TSPLIB's {@code EUC_2D} instances, a line each: name, places, length, optimum,
 * length over optimum, milliseconds. {@code .ci/bench tour [--optima CSV] FILE.tsp…}
 *
 * <p>The optima are looked up by the file's name, in {@code optima.csv} beside the files' folder
 * unless another is named; {@code -} stands for one that is unknown.
 */
final class TourBench {
  private final Optional<Path> optima;

  private TourBench(Optional<Path> optima) {
    this.optima = optima;
  }

  public static void main(String[] args) {
    try {
      List<String> files = new ArrayList<>(List.of(args));
      Optional<Path> optima = Optional.empty();
      if (files.size() > 1 && files.get(0).equals("--optima")) {
        optima = Optional.of(Path.of(files.get(1)));
        files = files.subList(2, files.size());
      }
      if (files.isEmpty() || files.get(0).startsWith("-")) {
        throw new IOException("usage: .ci/bench tour [--optima CSV] FILE.tsp...");
      }
      new TourBench(optima).run(files.stream().map(Path::of).toList());
    } catch (NoSuchFileException e) {
      refuse("no file " + e.getMessage());
    } catch (IOException e) {
      refuse(e.getMessage());
    }
  }

  private static void refuse(String message) {
    System.err.println(message);
    System.exit(2);
  }

  private void run(List<Path> files) throws IOException {
    for (Path file : files) {
      TspInstance instance = TspInstance.read(file);
      // Warm: every instance is solved once untimed, so that what it needs is compiled, then timed.
      instance.solve();
      long start = System.nanoTime();
      int[] order = instance.solve();
      long elapsed = (System.nanoTime() - start) / 1_000_000;
      if (!instance.isTour(order)) {
        throw new IllegalStateException(file + ": not every place once");
      }
      System.out.println(line(file, instance, order) + " " + elapsed);
    }
  }

  private String line(Path file, TspInstance instance, int[] order) throws IOException {
    long length = instance.length(order);
    String base = file.getFileName().toString();
    Optional<Long> optimum = optimum(file, base);
    return String.join(
        " ",
        base.replaceFirst("\\.tsp$", ""),
        String.valueOf(order.length),
        String.valueOf(length),
        optimum.map(String::valueOf).orElse("-"),
        optimum
            .map(least -> String.format(Locale.ROOT, "%.5f", (double) length / least))
            .orElse("-"));
  }

  private Optional<Long> optimum(Path file, String base) throws IOException {
    Path beside = file.toAbsolutePath().normalize().getParent().resolveSibling("optima.csv");
    if (optima.isEmpty() && !Files.exists(beside)) {
      return Optional.empty();
    }
    return Files.readAllLines(optima.orElse(beside)).stream()
        .map(row -> row.split(",", -1))
        .filter(cells -> Path.of(cells[0]).getFileName().toString().equals(base))
        .filter(cells -> cells.length > 3 && cells[3].matches("[0-9]{1,18}"))
        .map(cells -> Long.valueOf(cells[3]))
        .findFirst();
  }
}
