package plycrag.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import plycrag.files.json.Manifest;
import plycrag.files.json.ManifestWriter;

/** The folder in which everything made from one parameter file lies; see the package. */
public final class OutputFolder {
  private final Path target;
  private final Path fresh;
  private final Path old;
  private final Disk disk;

  /**
   * A folder that may or may not be there yet.
   *
   * @param target where it is, as messages name it
   */
  public OutputFolder(Path target) {
    this(target, new Disk.Real());
  }

  OutputFolder(Path target, Disk disk) {
    this.target = target;
    this.fresh = target.resolveSibling("." + target.getFileName() + ".new");
    this.old = target.resolveSibling("." + target.getFileName() + ".old");
    this.disk = disk;
  }

  /**
   * Puts the files and their manifest in the place of what the folder held, all or none.
   *
   * @param origin what the files were made from
   * @param files all of them, the manifest not among them
   * @throws OutputFolderException if the folder holds what the program did not write, or if
   *     something cannot be read or written
   * @throws IllegalArgumentException if two files have the same path, upper and lower case not told
   *     apart, or one has the manifest's; a defect of the caller
   */
  public void replace(Manifest.Origin origin, List<OutputFile> files) throws OutputFolderException {
    requireDistinct(files);
    try {
      bringBack();
      new Ownership(target).require();
      sweep(old);
      sweep(fresh);
      writeAside(origin, files);
      moveIn();
      sweep(old);
    } catch (IOException e) {
      throw new OutputFolderException(e);
    } catch (UncheckedIOException e) {
      throw new OutputFolderException(e.getCause());
    }
  }

  private static void requireDistinct(List<OutputFile> files) {
    Set<String> taken = new HashSet<>(Set.of(Manifest.PATH));
    for (OutputFile file : files) {
      if (!taken.add(file.path().toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException("two files at " + file.path());
      }
    }
  }

  private void bringBack() throws IOException {
    if (!exists(target) && Files.isDirectory(old, LinkOption.NOFOLLOW_LINKS)) {
      disk.move(old, target);
    }
  }

  private void writeAside(Manifest.Origin origin, List<OutputFile> files) throws IOException {
    disk.makeFolder(fresh);
    for (OutputFile file : files) {
      Path place = fresh.resolve(file.path());
      disk.makeFolder(place.getParent());
      disk.write(place, file.content());
    }
    Manifest manifest = new Manifest(origin, files.stream().map(OutputFile::entry).toList());
    OutputFile listing = OutputFile.text(Manifest.PATH, ManifestWriter.write(manifest));
    disk.write(fresh.resolve(listing.path()), listing.content());
  }

  private void moveIn() throws IOException {
    if (exists(target)) {
      disk.move(target, old);
    }
    try {
      disk.move(fresh, target);
    } catch (IOException e) {
      takeBack(e);
      throw e;
    }
  }

  private void takeBack(IOException reason) {
    try {
      bringBack();
    } catch (IOException e) {
      reason.addSuppressed(e);
    }
  }

  private void sweep(Path folder) throws IOException {
    if (!exists(folder)) {
      return;
    }
    try (Stream<Path> tree = Files.walk(folder)) {
      for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
        disk.delete(path);
      }
    }
  }

  private static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }
}
