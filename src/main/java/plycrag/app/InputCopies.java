package plycrag.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import plycrag.files.OutputFile;

/**
 * What was read, to be kept beside what is made of it, so that anybody can build it again.
 *
 * <p>The parameter file and its lists lie to each other as they did, so that the copy finds them:
 * where it names one above its own folder, it lies so many folders deeper. What is named by an
 * absolute path has its name alone, and a character that some file system would misread becomes a
 * hyphen; there the copy has to be told the new name before it is built.
 */
final class InputCopies {
  /** What they lie in begins so. */
  static final String FOLDER = "inputs/";

  private static final Path UP = Path.of("..");
  private static final Path DEEPER = Path.of("wall");

  private final List<OutputFile> files = new ArrayList<>();
  private final Set<Path> kept = new HashSet<>();
  private final Set<String> taken = new HashSet<>();
  private final Path home;

  /**
   * For lists as a parameter file names them.
   *
   * @param named their paths, from the parameter file's folder or absolute
   */
  InputCopies(List<Path> named) {
    Path deep = Path.of("");
    for (int up = named.stream().mapToInt(InputCopies::ups).max().orElse(0); up > 0; up--) {
      deep = deep.resolve(DEEPER);
    }
    this.home = deep;
  }

  private static int ups(Path named) {
    return (int)
        StreamSupport.stream(named.normalize().spliterator(), false).filter(UP::equals).count();
  }

  /**
   * Keeps a file, once however often it is named.
   *
   * @param named its path, from the parameter file's folder or absolute
   * @param content its bytes, as read
   */
  void add(Path named, byte[] content) {
    Path from = named.isAbsolute() ? named.getFileName() : named;
    if (kept.add(named.normalize())) {
      files.add(new OutputFile(FOLDER + free(safe(home.resolve(from).normalize())), content));
    }
  }

  /** All of them, in the order in which they came. */
  List<OutputFile> files() {
    return List.copyOf(files);
  }

  /** Where nothing else is, or has to have a folder. */
  private String free(String wanted) {
    String path = wanted;
    for (int number = 2; isTaken(path.toLowerCase(Locale.ROOT)); number++) {
      path = number + "/" + wanted;
    }
    taken.add(path.toLowerCase(Locale.ROOT));
    return path;
  }

  private boolean isTaken(String path) {
    return taken.stream()
        .anyMatch(
            other ->
                other.equals(path) || other.startsWith(path + "/") || path.startsWith(other + "/"));
  }

  private static String safe(Path path) {
    return StreamSupport.stream(path.spliterator(), false)
        .map(part -> safe(part.toString()))
        .collect(Collectors.joining("/"));
  }

  private static String safe(String name) {
    String plain = name.replaceAll("[^A-Za-z0-9._-]", "-");
    return plain.matches("[A-Za-z0-9].*") ? plain : "file" + plain;
  }
}
