package plycrag.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** What the output folder does to a disk, one step each, so that tests can stop it anywhere. */
interface Disk {

  /** Makes a folder, and those above it where they are missing. */
  void makeFolder(Path folder) throws IOException;

  /** Writes a file that is not there yet. */
  void write(Path file, byte[] content) throws IOException;

  /** Gives a folder another name beside itself, in one step. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file, a link or an empty folder. */
  void delete(Path path) throws IOException;

  /** The disk of the machine. */
  final class Real implements Disk {
    @Override
    public void makeFolder(Path folder) throws IOException {
      Files.createDirectories(folder);
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void delete(Path path) throws IOException {
      Files.delete(path);
    }
  }
}
