package plycrag.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A file on the disk that the user wrote.
 *
 * @param path as the user named it
 */
record Source(Path path) {
  private static final String ENDING = ".toml";

  /** Its bytes. */
  byte[] bytes() throws SourceException {
    try {
      return Files.readAllBytes(path);
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
