package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import plycrag.TestFiles;
import plycrag.finding.FindingLine;

/**
 * Walls that once were too much for the program. The first comment line of each file says what
 * becomes of it: {@code builds}, or the finding that it must earn among others. Whatever it is, the
 * whole folder is made of it, refused or not.
 */
class HardWallsTest {
  private static final Path FOLDER = Path.of("src/test/resources/hard-walls");
  private static final String BUILDS = "builds";

  @TestFactory
  Stream<DynamicTest> becomeWhatTheySay() {
    List<Path> files = TestFiles.list(FOLDER, ".toml");
    assertThat(files).isNotEmpty();
    return files.stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static void check(Path file) {
    String text = TestFiles.read(file);
    String expected = text.lines().findFirst().orElseThrow().substring("# ".length());
    Design design = Designs.of(file.getFileName().toString(), text);
    assertThat(design).isInstanceOf(Design.Judged.class);
    Design.Judged judged = (Design.Judged) design;
    List<String> findings = judged.checked().findings().stream().map(FindingLine::of).toList();
    assertThat(judged.checked().isApproved())
        .as("%s", findings)
        .isEqualTo(!expected.startsWith("error: "));
    if (!expected.equals(BUILDS)) {
      assertThat(findings).contains(expected);
    }
    assertThat(Release.of(Deliverable.of(judged))).isNotEmpty();
  }
}
