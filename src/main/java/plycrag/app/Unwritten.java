package plycrag.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file that could not be written; the message is a sentence for a person. */
final class Unwritten extends Exception {
  private static final long serialVersionUID = 1L;

  private Unwritten(String message, IOException cause) {
    super(message, cause);
  }

  /** One for which there is no more to tell. */
  static Unwritten because(String sentence) {
    return new Unwritten(sentence, null);
  }

  /** Writes a file, over one that may be there. */
  static void write(Path file, byte[] content) throws Unwritten {
    try {
      Files.write(file, content);
    } catch (NoSuchFileException e) {
      throw new Unwritten(file + ": there is no such folder", e);
    } catch (IOException e) {
      throw new Unwritten(file + ": could not be written: " + e.getMessage(), e);
    }
  }
}
