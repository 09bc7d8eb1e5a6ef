package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.files.lint.DxfTags;

/** LibreCAD opens every DXF of the samples and shows what is in it. */
@Tag("conformance")
class LibreCadTest {
  private static final Path SAMPLES = Path.of("out-samples");
  private static final Pattern STROKE = Pattern.compile("<path style=[^>]* d=\"([^\"]*)\"");

  @TempDir private Path made;

  static List<Path> folders() {
    return TestFiles.samples().stream()
        .map(file -> SAMPLES.resolve(file.getFileName().toString().replace(".toml", "")))
        .toList();
  }

  /** It draws a circle as four curves, and shows the whole drawing when asked to fit it. */
  @ParameterizedTest
  @MethodSource("folders")
  void showsEveryCircleAndLinesBeside(Path folder) {
    List<Path> drawings = TestFiles.list(folder, ".dxf");
    assertThat(drawings).isNotEmpty();
    show(drawings);
    for (Path drawing : drawings) {
      DxfTags file = DxfTags.read(TestFiles.read(drawing));
      List<String> strokes = strokes(drawing);
      List<String> circles = strokes.stream().filter(one -> count(one, " C ") == 4).toList();
      assertThat(circles).as(drawing.toString()).hasSameSizeAs(file.circles());
      assertThat(strokes.size() - circles.size())
          .as(drawing.toString())
          .isGreaterThanOrEqualTo(file.lines().size() + file.polylines().size());
    }
  }

  private void show(List<Path> drawings) {
    List<String> command = new ArrayList<>(List.of("env", "QT_QPA_PLATFORM=offscreen"));
    command.addAll(List.of("librecad", "dxf2pdf", "-a", "-c", "-t", made.toString()));
    drawings.forEach(drawing -> command.add(drawing.toAbsolutePath().toString()));
    Tools.output(command.toArray(new String[0]));
  }

  private List<String> strokes(Path drawing) {
    String name = drawing.getFileName().toString().replace(".dxf", ".pdf");
    String picture = Tools.output("pdftocairo", "-svg", made.resolve(name).toString(), "-");
    List<String> strokes = new ArrayList<>();
    for (Matcher stroke = STROKE.matcher(picture); stroke.find(); ) {
      strokes.add(stroke.group(1));
    }
    return strokes;
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }
}
