package plycrag.app.watch;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import plycrag.document.WallPage;
import plycrag.files.OutputFile;
import plycrag.files.space.PageData;
import plycrag.files.space.WallPageWriter;

/** A wall as it is served. */
public final class Showing {
  private final WallPage page;
  private final byte[] model;
  private final Supplier<List<OutputFile>> making;
  private List<OutputFile> files;

  /**
   * A wall that is shown.
   *
   * @param page what is told of it
   * @param model as a binary glTF file
   * @param making makes everything that a build would write; asked once, when somebody asks for it
   */
  public Showing(WallPage page, byte[] model, Supplier<List<OutputFile>> making) {
    this.page = page;
    this.model = model.clone();
    this.making = making;
  }

  /**
   * What a path leads to, from the root of what is served and without a slash at its start.
   *
   * @return nothing where it leads to nothing
   */
  Optional<byte[]> at(String path, int revision) {
    return switch (path) {
      case "" -> Optional.of(text(WallPageWriter.writeLive(page, model, revision)));
      case "wall.json" -> Optional.of(text(PageData.json(page)));
      case "model.glb" -> Optional.of(model.clone());
      default ->
          files().stream()
              .filter(file -> file.path().equals(path))
              .findFirst()
              .map(OutputFile::content);
    };
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private synchronized List<OutputFile> files() {
    if (files == null) {
      files = making.get();
    }
    return files;
  }
}
