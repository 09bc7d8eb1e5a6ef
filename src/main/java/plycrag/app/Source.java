package plycrag.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Text that the user wrote: a file on the disk, or what came in by standard input.
 *
 * @param path as the user named it
 * @param content opens it
 */
record Source(Path path, Content content) {
  private static final String ENDING = ".toml";
  private static final Path DASH = Path.of("-");

  /** Where standard input seems to lie: in the folder from which the program was started. */
  private static final Path STANDARD_INPUT = Path.of("standard-input");

  /** Where bytes come from. */
  @FunctionalInterface
  interface Content {
    /** All of them. */
    byte[] read() throws IOException;
  }

  /** A file on the disk. */
  Source(Path path) {
    this(path, () -> Files.readAllBytes(path));
  }

  /** A file on the disk, or standard input if it is named {@code -}. */
  static Source named(Path path, InputStream in) {
    return isStandardInput(path) ? new Source(STANDARD_INPUT, in::readAllBytes) : new Source(path);
  }

  /** Whether this names standard input. */
  static boolean isStandardInput(Path path) {
    return path.equals(DASH);
  }

  /** Its bytes. */
  byte[] bytes() throws SourceException {
    try {
      return content.read();
    } catch (NoSuchFileException e) {
      throw new SourceException(path + ": there is no such file", e);
    } catch (IOException e) {
      throw new SourceException(path + ": could not be read: " + e.getMessage(), e);
    }
  }

  /** A file that it names by a path from its own folder. */
  Source beside(String relative) {
    return new Source(path.resolveSibling(relative));
  }

  /** Its name without its folder. */
  String name() {
    return String.valueOf(path.getFileName());
  }

  /** Its name without ending: the name of the folder that it makes. */
  String stem() {
    return name().endsWith(ENDING)
        ? name().substring(0, name().length() - ENDING.length())
        : name();
  }

  /** A file that could not be read; the message is a sentence for a person. */
  static final class SourceException extends Exception {
    private static final long serialVersionUID = 1L;

    SourceException(String message, IOException cause) {
      super(message, cause);
    }
  }
}
