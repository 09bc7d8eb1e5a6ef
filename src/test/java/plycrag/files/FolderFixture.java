package plycrag.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import plycrag.files.json.Manifest;

/** What tests write into a folder, and what they find there. */
final class FolderFixture {
  static final Manifest.Origin ORIGIN =
      new Manifest.Origin(
          "0.1.0",
          new Manifest.Input("boathouse.toml", "0".repeat(64)),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private FolderFixture() {}

  /** Three files that tell by their content which run wrote them. */
  static List<OutputFile> run(String name) {
    return List.of(
        OutputFile.text("index.html", "page of " + name),
        OutputFile.text("lists/holes.csv", "holes of " + name),
        OutputFile.text("only-" + name + ".txt", name));
  }

  /** Every file below a folder with its text, the manifest left out. */
  static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path file : tree.filter(Files::isRegularFile).toList()) {
        content.put(
            folder.relativize(file).toString(), Files.readString(file, StandardCharsets.UTF_8));
      }
    }
    content.remove(Manifest.PATH);
    return content;
  }

  /** What a folder holds after a run. */
  static Map<String, String> contentOf(String name) {
    Map<String, String> content = new TreeMap<>();
    run(name)
        .forEach(
            file -> content.put(file.path(), new String(file.content(), StandardCharsets.UTF_8)));
    return content;
  }

  /** The names in a folder. */
  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
