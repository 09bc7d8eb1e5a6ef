package plycrag.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plycrag.files.json.Manifest;
import plycrag.files.json.ManifestReader;

/** Whether a folder holds only what the program wrote. */
final class Ownership {
  private static final int NAMED = 5;
  private static final String ADVICE = "; move them away or choose another output folder";

  private final Path folder;

  /**
   * Asks of one folder.
   *
   * @param folder the folder, as messages name it
   */
  Ownership(Path folder) {
    this.folder = folder;
  }

  /** Refuses what is not the program's to replace; a folder that is missing or empty is. */
  void require() throws IOException, OutputFolderException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw new OutputFolderException(
          folder + " is not a folder; move it away or choose another output folder");
    }
    Map<String, Path> files = files();
    Optional<Manifest> manifest = manifest(files.get(Manifest.PATH));
    if (manifest.isPresent()) {
      requireListed(files, manifest.get());
    } else if (!files.isEmpty()) {
      throw new OutputFolderException(
          folder
              + " has no manifest that says what may be replaced, and holds "
              + some(List.copyOf(files.keySet()))
              + ADVICE);
    }
  }

  private Map<String, Path> files() throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      return tree.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .collect(
              Collectors.toMap(this::relative, Function.identity(), (a, b) -> a, TreeMap::new));
    }
  }

  private String relative(Path path) {
    return folder.relativize(path).toString().replace(folder.getFileSystem().getSeparator(), "/");
  }

  private static Optional<Manifest> manifest(Path file) throws IOException {
    return file != null && plain(file)
        ? ManifestReader.read(Files.readAllBytes(file))
        : Optional.empty();
  }

  private void requireListed(Map<String, Path> files, Manifest manifest)
      throws IOException, OutputFolderException {
    Map<String, Manifest.Entry> listed =
        manifest.files().stream()
            .collect(Collectors.toMap(Manifest.Entry::path, Function.identity(), (a, b) -> a));
    List<String> foreign = new ArrayList<>();
    for (Map.Entry<String, Path> file : files.entrySet()) {
      Manifest.Entry entry = listed.get(file.getKey());
      if (entry != null && !same(file.getValue(), entry)) {
        foreign.add(file.getKey() + " (changed)");
      } else if (entry == null && !file.getKey().equals(Manifest.PATH)) {
        foreign.add(file.getKey() + " (added)");
      }
    }
    if (!foreign.isEmpty()) {
      throw new OutputFolderException(
          folder + " holds what the program did not write: " + some(foreign) + ADVICE);
    }
  }

  private static boolean same(Path file, Manifest.Entry entry) throws IOException {
    return plain(file)
        && Files.size(file) == entry.size()
        && Digest.sha256(Files.readAllBytes(file)).equals(entry.sha256());
  }

  private static boolean plain(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static String some(List<String> paths) {
    int more = paths.size() - NAMED;
    String named = paths.stream().limit(NAMED).collect(Collectors.joining(", "));
    return named.replaceAll("\\p{Cntrl}", "?") + (more > 0 ? " and " + more + " more" : "");
  }
}
