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
 * <p>The parameter file comes first. What lies in its folder or under it keeps its path from there,
 * so that the copy finds it; what lies elsewhere has its name alone. A character that some file
 * system would misread becomes a hyphen.
 */
final class InputCopies {
  /** The folder that they lie in. */
  static final String FOLDER = "inputs";

  private static final String UP = "..";

  private final List<OutputFile> files = new ArrayList<>();
  private final Set<String> taken = new HashSet<>();

  /**
   * Adds one.
   *
   * @param named its path as it was named, from the parameter file's folder
   * @param content its bytes, as read
   */
  void add(Path named, byte[] content) {
    Path path = named.normalize();
    boolean isBeneath = !path.isAbsolute() && !path.startsWith(UP);
    String wanted = isBeneath ? safe(path) : safe(String.valueOf(path.getFileName()));
    String free = wanted;
    for (int number = 2; !taken.add(free.toLowerCase(Locale.ROOT)); number++) {
      free = numbered(wanted, number);
    }
    files.add(new OutputFile(FOLDER + "/" + free, content));
  }

  /** All of them, in the order in which they came. */
  List<OutputFile> files() {
    return List.copyOf(files);
  }

  /**
   * Where the copy of a parameter file lies.
   *
   * @param folder of the deliverable
   * @param name of the file that it was made from
   */
  static Path parameters(Path folder, String name) {
    return folder.resolve(FOLDER).resolve(safe(name));
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

  private static String numbered(String path, int number) {
    int point = path.indexOf('.', path.lastIndexOf('/') + 1);
    return point < 0
        ? path + "-" + number
        : path.substring(0, point) + "-" + number + path.substring(point);
  }
}
