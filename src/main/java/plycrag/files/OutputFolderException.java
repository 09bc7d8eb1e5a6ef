package plycrag.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** The output folder was not replaced; the message is a sentence for a person. */
public final class OutputFolderException extends Exception {
  private static final long serialVersionUID = 1L;

  /** The folder is not the program's own; the message says why and what to do. */
  OutputFolderException(String message) {
    super(message);
  }

  /** Something could not be read or written. */
  OutputFolderException(IOException cause) {
    super(sentence(cause), cause);
  }

  private static String sentence(IOException cause) {
    return cause instanceof FileSystemException failure && failure.getFile() != null
        ? failure.getFile() + " could not be read or written: " + reason(failure)
        : "the output folder could not be read or written: " + cause.getMessage();
  }

  private static String reason(FileSystemException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    String reason = failure.getReason();
    return reason == null ? failure.getClass().getSimpleName() : reason;
  }
}
