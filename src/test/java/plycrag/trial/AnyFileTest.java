package plycrag.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No parameter file, however it is made up, ends in a defect; what is refused is refused with a
 * part at fault and a cure; and where a cure is a value of a key or a way for an opening to go, the
 * same is not said again of the file that follows it.
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

  @Test
  void someCuresAreFollowed() {
    follow(12);
  }

  @Test
  @Tag("conformance")
  void manyCuresAreFollowed() {
    follow(300);
  }

  private void follow(int count) {
    Trials trials = new Trials(folder);
    CuresFollowed cures = new CuresFollowed(folder);
    trials.run(count, TrialFile::of, cures::checked);
    trials.requireSound();
    assertThat(cures.count()).isPositive();
    assertThat(cures.vain()).isEmpty();
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
