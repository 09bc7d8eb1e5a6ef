package plycrag.app;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plycrag.files.OutputFile;

/**
 * What of a folder is asked for: all of it, or what has one of these names.
 *
 * @param names of folders, of files with or without their endings, or marks of sheets; empty for
 *     all
 */
record FolderPart(List<String> names) {
  /** What says in a folder that it is a part. */
  static final String NOTE = "PART.txt";

  private static final Pattern MARK = Pattern.compile("S[0-9]+");

  /** Copies the names. */
  FolderPart {
    names = List.copyOf(names);
  }

  /** All of a folder. */
  static FolderPart whole() {
    return new FolderPart(List.of());
  }

  /** Whether it is all. */
  boolean isWhole() {
    return names.isEmpty();
  }

  /** Whether a file is asked for. */
  boolean takes(String path) {
    return isWhole() || names.stream().anyMatch(name -> names(name, path));
  }

  /** Whether any of these may be, so that they have to be made. */
  boolean mayTake(List<String> paths) {
    return paths.stream().anyMatch(this::takes);
  }

  /** Whether any file of a folder may be. */
  boolean mayTakeOf(String folder) {
    return isWhole()
        || names.stream()
            .anyMatch(
                name -> MARK.matcher(name).matches() || (name + "/").startsWith(folder + "/"));
  }

  /** A name that no file has. */
  Optional<String> unknown(List<OutputFile> files) {
    return names.stream()
        .filter(name -> files.stream().noneMatch(file -> names(name, file.path())))
        .findFirst();
  }

  /** What a reader of the folder has to know. */
  OutputFile note(String wall) {
    return OutputFile.text(
        NOTE,
        "Of the wall "
            + wall
            + " this folder holds a part only: "
            + String.join(", ", names)
            + ".\nA build without --only makes the whole.\n");
  }

  private static boolean names(String name, String path) {
    if (MARK.matcher(name).matches()) {
      String file = path.substring(path.lastIndexOf('/') + 1);
      return file.matches("(.*-)?" + name + "([-.].*)?");
    }
    return path.startsWith(name + "/") || path.equals(name) || path.startsWith(name + ".");
  }
}
