package plycrag.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plycrag.files.FolderFixture.ORIGIN;
import static plycrag.files.FolderFixture.content;
import static plycrag.files.FolderFixture.contentOf;
import static plycrag.files.FolderFixture.names;
import static plycrag.files.FolderFixture.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Stops a run at each of its steps, as a pulled plug or a full disk would. */
class InterruptionTest {
  /** Folders and files aside: 7 and the manifest; 2 moves; 6 deletions of the old folder. */
  private static final int STEPS = 16;

  @TempDir private Path parent;
  private Path target;

  @BeforeEach
  void firstRun() throws Exception {
    target = parent.resolve("boathouse");
    new OutputFolder(target).replace(ORIGIN, run("first"));
  }

  static IntStream steps() {
    return IntStream.rangeClosed(1, STEPS);
  }

  @Test
  void stepsAreCounted() throws Exception {
    StoppingDisk disk = new StoppingDisk(Integer.MAX_VALUE, Integer.MAX_VALUE);

    new OutputFolder(target, disk).replace(ORIGIN, run("second"));

    assertThat(disk.steps).isEqualTo(STEPS);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void whenTheProgramDiesOldOrNewContentIsWhole(int step) throws Exception {
    assertThatThrownBy(() -> replaceStoppedAt(step, Integer.MAX_VALUE))
        .isInstanceOf(OutputFolderException.class)
        .hasMessageContaining("no space left");

    Path whole = Files.exists(target) ? target : parent.resolve(".boathouse.old");
    assertThat(content(whole)).isIn(contentOf("first"), contentOf("second"));
    new OutputFolder(target).replace(ORIGIN, run("third"));
    assertThat(content(target)).isEqualTo(contentOf("third"));
    assertThat(names(parent)).containsExactly("boathouse");
  }

  @ParameterizedTest
  @MethodSource("steps")
  void whenOneStepFailsTheFolderIsWholeAtOnce(int step) throws Exception {
    assertThatThrownBy(() -> replaceStoppedAt(step, step))
        .isInstanceOf(OutputFolderException.class);

    assertThat(content(target)).isIn(contentOf("first"), contentOf("second"));
  }

  @ParameterizedTest
  @MethodSource("steps")
  void anInterruptedRepairIsRepaired(int step) throws Exception {
    Files.move(target, parent.resolve(".boathouse.old"));
    Files.createDirectories(parent.resolve(".boathouse.new/lists"));
    assertThatThrownBy(() -> replaceStoppedAt(step, Integer.MAX_VALUE))
        .isInstanceOf(OutputFolderException.class);

    new OutputFolder(target).replace(ORIGIN, run("third"));

    assertThat(content(target)).isEqualTo(contentOf("third"));
    assertThat(names(parent)).containsExactly("boathouse");
  }

  @Test
  void whatTheUserPutInTheGapIsKept() throws Exception {
    Files.move(target, parent.resolve(".boathouse.old"));
    Files.createDirectory(target);
    Files.writeString(target.resolve("notes.txt"), "mine");

    assertThatThrownBy(() -> new OutputFolder(target).replace(ORIGIN, run("third")))
        .isInstanceOf(OutputFolderException.class)
        .hasMessageContaining("notes.txt");

    assertThat(content(target)).containsEntry("notes.txt", "mine");
    assertThat(content(parent.resolve(".boathouse.old"))).isEqualTo(contentOf("first"));
  }

  private void replaceStoppedAt(int first, int last) throws OutputFolderException {
    new OutputFolder(target, new StoppingDisk(first, last)).replace(ORIGIN, run("second"));
  }

  /** A disk that fails from one step to another, counted from 1; a failing write leaves half. */
  private static final class StoppingDisk implements Disk {
    private final Disk real = new Disk.Real();
    private final int first;
    private final int last;
    private int steps;

    StoppingDisk(int first, int last) {
      this.first = first;
      this.last = last;
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
      step();
      real.makeFolder(folder);
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      try {
        step();
      } catch (IOException e) {
        Files.write(file, Arrays.copyOf(content, content.length / 2));
        throw e;
      }
      real.write(file, content);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      step();
      real.move(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
      step();
      real.delete(path);
    }

    private void step() throws IOException {
      steps++;
      if (steps >= first && steps <= last) {
        throw new IOException("no space left");
      }
    }
  }
}
