package plycrag.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plycrag.document.Xy;
import plycrag.solve.tour.ClosedTour;

/**
 * A two-dimensional instance with the distances {@code EUC_2D} of G. Reinelt, "TSPLIB – A Traveling
 * Salesman Problem Library", ORSA Journal on Computing 3(4), 1991.
 */
public record TspInstance(List<Xy> places) {

  /**
   * Reads a file.
   *
   * @throws IOException if it can't be read or is no such instance
   */
  public static TspInstance read(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file).stream().map(String::strip).toList();
    if (!lines.stream().anyMatch(line -> line.matches("EDGE_WEIGHT_TYPE\\s*:\\s*EUC_2D"))) {
      throw new IOException(file + ": EDGE_WEIGHT_TYPE is not EUC_2D");
    }
    List<Xy> places = places(file, lines);
    int dimension = dimension(file, lines);
    if (places.isEmpty() || places.size() != dimension) {
      throw new IOException(file + ": " + places.size() + " places, DIMENSION " + dimension);
    }
    return new TspInstance(places);
  }

  private static int dimension(Path file, List<String> lines) throws IOException {
    return lines.stream()
        .filter(line -> line.matches("DIMENSION\\s*:\\s*[0-9]{1,9}"))
        .map(line -> Integer.valueOf(line.substring(line.indexOf(':') + 1).strip()))
        .findFirst()
        .orElseThrow(() -> new IOException(file + ": no DIMENSION"));
  }

  private static List<Xy> places(Path file, List<String> lines) throws IOException {
    List<Xy> places = new ArrayList<>();
    int first = lines.indexOf("NODE_COORD_SECTION") + 1;
    for (String line : first == 0 ? List.<String>of() : lines.subList(first, lines.size())) {
      if (line.matches("[A-Z_]+\\s*:?.*")) {
        break;
      }
      if (!line.isEmpty()) {
        places.add(place(file, line));
      }
    }
    return List.copyOf(places);
  }

  private static Xy place(Path file, String line) throws IOException {
    try {
      String[] words = line.split("\\s+", -1);
      return new Xy(Double.parseDouble(words[1]), Double.parseDouble(words[2]));
    } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
      throw new IOException(file + ": not a place: " + line, e);
    }
  }

  /** The order of a short closed tour. */
  public int[] solve() {
    return ClosedTour.of(places, TspInstance::rounded);
  }

  /** The length of a closed tour. */
  public long length(int[] order) {
    long length = 0;
    for (int at = 0; at < order.length; at++) {
      length += distance(places.get(order[at]), places.get(order[(at + 1) % order.length]));
    }
    return length;
  }

  /** Whether an order holds every place once. */
  public boolean isTour(int[] order) {
    int[] sorted = order.clone();
    Arrays.sort(sorted);
    boolean all = sorted.length == places.size();
    for (int at = 0; all && at < sorted.length; at++) {
      all = sorted[at] == at;
    }
    return all;
  }

  private static long distance(Xy one, Xy other) {
    double dx = one.x() - other.x();
    double dy = one.y() - other.y();
    return (long) rounded(Math.sqrt(dx * dx + dy * dy));
  }

  private static double rounded(double distance) {
    return (long) (distance + 0.5);
  }
}
