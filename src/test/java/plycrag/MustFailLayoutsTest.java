package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import plycrag.app.Design;
import plycrag.app.Designs;
import plycrag.finding.FindingLine;

/**
 * Walls that must be refused: the first comment line of each file is the message that it must earn,
 * further ones that begin with {@code also:} are the rest, and there are no others.
 */
class MustFailLayoutsTest {
  private static final Path FOLDER = Path.of("src/test/resources/must-fail/layout");
  private static final String ALSO = "# also: ";

  @TestFactory
  Stream<DynamicTest> earnTheirMessages() {
    List<Path> files = TestFiles.list(FOLDER, ".toml");
    assertThat(files).isNotEmpty();
    return files.stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static void check(Path file) {
    String text = TestFiles.read(file);
    Design design = Designs.of(file.getFileName().toString(), text);
    assertThat(design).isInstanceOf(Design.Judged.class);
    Design.Judged judged = (Design.Judged) design;
    assertThat(judged.checked().isApproved()).isFalse();
    assertThat(judged.checked().findings().stream().map(FindingLine::of))
        .containsExactlyElementsOf(expected(text));
  }

  private static List<String> expected(String text) {
    List<String> lines = text.lines().toList();
    List<String> expected = new ArrayList<>();
    expected.add(lines.get(0).substring("# ".length()));
    lines.stream()
        .filter(line -> line.startsWith(ALSO))
        .map(line -> line.substring(ALSO.length()))
        .forEach(expected::add);
    return expected;
  }
}
