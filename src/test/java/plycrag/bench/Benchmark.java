package plycrag.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A solver against published instances: a line on the standard output for each file, and nothing
 * else there.
 *
 * @param usage what may follow the solver's name
 * @param mayRotate whether {@code --rotate} means something
 * @param solver makes the line of one file
 */
record Benchmark(String usage, boolean mayRotate, Solver solver) {

  /** Solves one file. */
  interface Solver {
    /**
     * The line of a file.
     *
     * @throws IOException if it cannot be read
     * @throws IllegalArgumentException if it holds no instance
     */
    String line(Path file, Options options) throws IOException;
  }

  /**
   * What a run is asked for.
   *
   * @param rotate whether pieces may turn
   * @param optima the table of published values, if one was named
   * @param files in order
   */
  record Options(boolean rotate, Optional<Path> optima, List<Path> files) {}

  /** 0, or 2 after one message. */
  int run(PrintStream out, PrintStream err, String... arguments) {
    try {
      Options options = options(arguments);
      for (Path file : options.files()) {
        out.println(solver.line(file, options));
      }
      return 0;
    } catch (NoSuchFileException fault) {
      err.println("no file " + fault.getMessage());
    } catch (IOException | IllegalArgumentException fault) {
      err.println(fault.getMessage());
    }
    return 2;
  }

  private Options options(String... arguments) {
    boolean rotate = false;
    Optional<Path> optima = Optional.empty();
    List<Path> files = new ArrayList<>();
    for (int at = 0; at < arguments.length; at++) {
      String argument = arguments[at];
      if (argument.equals("--rotate") && mayRotate) {
        rotate = true;
      } else if (argument.equals("--optima") && at + 1 < arguments.length) {
        optima = Optional.of(Path.of(arguments[++at]));
      } else if (argument.startsWith("--")) {
        throw new IllegalArgumentException("usage: .ci/bench " + usage);
      } else {
        files.add(Path.of(argument));
      }
    }
    if (files.isEmpty()) {
      throw new IllegalArgumentException("usage: .ci/bench " + usage);
    }
    return new Options(rotate, optima, List.copyOf(files));
  }

  /** A file's name without its ending. */
  static String name(Path file) {
    return file.getFileName().toString().replaceFirst("\\.[a-z]+$", "");
  }
}
