package plycrag.files;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import plycrag.files.json.Manifest;

/** A file of the output folder, in memory. */
public final class OutputFile {
  private static final Pattern PATH =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*(/[A-Za-z0-9][A-Za-z0-9._-]*)*");

  private final String path;
  private final byte[] content;

  /**
   * A file.
   *
   * @param path from the folder, with {@code /}; only what every file system takes: ASCII letters,
   *     digits, point, hyphen and underscore, a letter or digit first
   * @param content its bytes
   * @throws IllegalArgumentException for another path; a defect of the caller
   */
  public OutputFile(String path, byte[] content) {
    if (!PATH.matcher(path).matches()) {
      throw new IllegalArgumentException("path of an output file: " + path);
    }
    this.path = path;
    this.content = content.clone();
  }

  /** A text file in UTF-8 without a byte-order mark. */
  public static OutputFile text(String path, String text) {
    return new OutputFile(path, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Its path from the folder. */
  public String path() {
    return path;
  }

  /** A copy of its bytes. */
  public byte[] content() {
    return content.clone();
  }

  /** Its line in the manifest. */
  Manifest.Entry entry() {
    return new Manifest.Entry(path, content.length, Digest.sha256(content));
  }
}
