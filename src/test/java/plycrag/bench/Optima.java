package plycrag.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The published values of instances, in a table with the columns {@code file} and {@code optimum},
 * and {@code family} where a file has several: the one that was named, else {@code optima.csv}
 * above the files' folder.
 */
final class Optima {
  private Optima() {}

  /**
   * The value of a file, looked up by its name.
   *
   * @param family what the row's family ends with
   * @throws IOException if a table that was named cannot be read
   * @throws IllegalArgumentException if it lacks a column
   */
  static Optional<Long> find(Path file, String family, Benchmark.Options options)
      throws IOException {
    Path beside = file.toAbsolutePath().normalize().getParent().resolveSibling("optima.csv");
    if (options.optima().isEmpty() && !Files.exists(beside)) {
      return Optional.empty();
    }
    Path table = options.optima().orElse(beside);
    List<String> rows = Files.readAllLines(table);
    List<String> columns = List.of(rows.get(0).split(",", -1));
    if (!columns.containsAll(List.of("file", "optimum"))) {
      throw new IllegalArgumentException(table + ": the columns file and optimum are needed");
    }
    int families = columns.indexOf("family");
    return rows.stream()
        .skip(1)
        .map(row -> row.split(",", -1))
        .filter(cells -> families < 0 || cells[families].endsWith(family))
        .filter(cells -> isOf(file, cells[columns.indexOf("file")]))
        .map(cells -> Long.valueOf(cells[columns.indexOf("optimum")]))
        .findFirst();
  }

  private static boolean isOf(Path file, String named) {
    return Path.of(named).getFileName().equals(file.getFileName());
  }
}
