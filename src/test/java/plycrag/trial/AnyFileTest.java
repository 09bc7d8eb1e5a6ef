package plycrag.trial;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No parameter file, however it is made up, ends in a defect; and what is refused is refused with a
 * part at fault and a cure.
 */
class AnyFileTest {
  @TempDir private Path folder;

  @Test
  void someFilesAreChecked() {
    check(24);
  }

  @Test
  void someFilesAreBuilt() {
    build(3);
  }

  @Test
  @Tag("conformance")
  void manyFilesAreChecked() {
    check(1000);
  }

  @Test
  @Tag("conformance")
  void manyFilesAreBuilt() {
    build(30);
  }

  private void check(int count) {
    Trials trials = new Trials(folder);
    trials.run(count, TrialFile::of, trials::checked);
    trials.requireSound();
  }

  private void build(int count) {
    Trials trials = new Trials(folder);
    trials.run(count, TrialFile::of, trials::built);
    trials.requireSound();
  }
}
