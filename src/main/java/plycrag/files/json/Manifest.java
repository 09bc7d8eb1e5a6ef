package plycrag.files.json;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What an output folder holds and what it was made from.
 *
 * @param origin what it was made from
 * @param files every file but the manifest, sorted by path
 */
public record Manifest(Origin origin, List<Entry> files) {
  /** Where a folder keeps its manifest. */
  public static final String PATH = "manifest.json";

  private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");

  /** Sorts the files. */
  public Manifest {
    Objects.requireNonNull(origin);
    files = files.stream().sorted(Comparator.comparing(Entry::path)).toList();
  }

  /**
   * What a folder was made from.
   *
   * @param version the program's version
   * @param parameters the parameter file
   * @param prices the price list that it names, if it names one
   * @param positions the list of positions that it names, if it names one
   * @param catalogue the catalogue of steel that it names, if it names one
   */
  public record Origin(
      String version,
      Input parameters,
      Optional<Input> prices,
      Optional<Input> positions,
      Optional<Input> catalogue) {
    /** Rejects missing parts. */
    public Origin {
      Objects.requireNonNull(version);
      Objects.requireNonNull(parameters);
      Objects.requireNonNull(prices);
      Objects.requireNonNull(positions);
      Objects.requireNonNull(catalogue);
    }
  }

  /**
   * A file that was read.
   *
   * @param file its name, without any folder
   * @param sha256 of its content, 64 hexadecimal digits in lower case
   */
  public record Input(String file, String sha256) {
    /** Rejects a path, which would tell about the machine, and what is no SHA-256. */
    public Input {
      if (file.indexOf('/') >= 0 || file.indexOf('\\') >= 0) {
        throw new IllegalArgumentException("a name, not a path: " + file);
      }
      requireSha256(sha256);
    }
  }

  /**
   * A file.
   *
   * @param path from the folder, with {@code /}
   * @param size in bytes
   * @param sha256 of its content, 64 hexadecimal digits in lower case
   */
  public record Entry(String path, long size, String sha256) {
    /** Rejects what describes no file. */
    public Entry {
      Objects.requireNonNull(path);
      requireSha256(sha256);
      if (size < 0) {
        throw new IllegalArgumentException("size " + size);
      }
    }
  }

  private static void requireSha256(String text) {
    if (!SHA256.matcher(text).matches()) {
      throw new IllegalArgumentException("not a SHA-256: " + text);
    }
  }
}
