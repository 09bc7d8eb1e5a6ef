package plycrag.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import plycrag.files.Digest;
import plycrag.files.json.Manifest;
import plycrag.files.json.ManifestReader;

/** A folder that was built, told by the inputs that it keeps. */
final class BuiltFolder {
  private final Path folder;

  /**
   * Any folder; what is none that was built says so when its parameter file is read.
   *
   * @param folder as the user named it
   */
  BuiltFolder(Path folder) {
    this.folder = folder;
  }

  /** The parameter file that it was made from. */
  Source parameters() {
    Optional<Manifest> manifest;
    try {
      manifest = ManifestReader.read(Files.readAllBytes(folder.resolve(Manifest.PATH)));
    } catch (NoSuchFileException e) {
      return unreadable(new IOException("it is no folder that was built", e));
    } catch (IOException e) {
      return unreadable(e);
    }
    List<Manifest.Entry> inputs = manifest.map(BuiltFolder::inputs).orElse(List.of());
    return inputs.stream()
        .filter(one -> one.sha256().equals(manifest.orElseThrow().origin().parameters().sha256()))
        .findFirst()
        .map(one -> new Source(folder.resolve(one.path()), () -> unchanged(one, inputs)))
        .orElseGet(
            () -> unreadable(new IOException("it keeps no parameter file that it was built from")));
  }

  private static List<Manifest.Entry> inputs(Manifest manifest) {
    return manifest.files().stream()
        .filter(file -> file.path().startsWith(InputCopies.FOLDER))
        .toList();
  }

  private Source unreadable(IOException why) {
    return new Source(
        folder,
        () -> {
          throw why;
        });
  }

  /** What one holds, if all are as they were. */
  private byte[] unchanged(Manifest.Entry wanted, List<Manifest.Entry> inputs) throws IOException {
    for (Manifest.Entry one : inputs) {
      if (!Digest.sha256(Files.readAllBytes(folder.resolve(one.path()))).equals(one.sha256())) {
        throw new IOException(one.path() + " was changed after the folder was built");
      }
    }
    return Files.readAllBytes(folder.resolve(wanted.path()));
  }
}
