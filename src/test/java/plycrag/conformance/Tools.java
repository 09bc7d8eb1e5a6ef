package plycrag.conformance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs programs from outside. One that is missing is a failure, not a reason to skip. */
public final class Tools {
  /**
   * Debian's own Python, since its packages are there and another may come first on the path;
   * anywhere else the first on the path.
   */
  public static final String PYTHON =
      Files.isExecutable(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";

  private static final int SECONDS = 120;

  private Tools() {}

  /**
   * How a program ended.
   *
   * @param exit its exit code
   * @param output what it printed, errors among it
   */
  public record Result(int exit, String output) {}

  /** Runs a program in an empty folder of its own. */
  public static Result run(String... command) {
    try {
      Path folder = Files.createTempDirectory("plycrag-tool");
      try {
        return run(folder, List.of(command));
      } finally {
        delete(folder);
      }
    } catch (IOException missing) {
      throw new AssertionError("cannot run " + command[0] + ": is it installed?", missing);
    }
  }

  /** The output of a program that must end well. */
  public static String output(String... command) {
    Result result = run(command);
    if (result.exit() != 0) {
      throw new AssertionError(String.join(" ", command) + ": " + result);
    }
    return result.output();
  }

  /** Puts text into a file, to be read by a program. */
  public static Path write(Path file, String text) {
    try {
      return Files.writeString(file, text);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static Result run(Path folder, List<String> command) throws IOException {
    Path output = folder.resolve("output");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    process.getOutputStream().close();
    try {
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError(command + " took longer than " + SECONDS + " s");
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new AssertionError(interrupted);
    }
    return new Result(process.exitValue(), Files.readString(output, StandardCharsets.UTF_8));
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
