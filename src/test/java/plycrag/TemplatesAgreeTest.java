package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The samples' true-size templates, read by patterns, show each hole of the list once. */
class TemplatesAgreeTest {
  private static final Path SAMPLES = Path.of("out-samples");
  private static final Pattern CIRCLE =
      Pattern.compile("<circle cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"([0-9.]+)\"");

  private record Hole(double x, double y, double diameter) {}

  static List<Path> templates() {
    return TestFiles.list(SAMPLES, ".svg").stream()
        .filter(file -> file.getParent().endsWith("templates"))
        .filter(file -> file.getFileName().toString().startsWith("sheet-"))
        .toList();
  }

  @Test
  void oneSampleAtLeastHasSome() {
    assertThat(templates()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("templates")
  void showEachHoleOnce(Path file) {
    List<Hole> drawn = new ArrayList<>();
    for (Matcher circle = CIRCLE.matcher(TestFiles.read(file)); circle.find(); ) {
      double diameter = 2 * Double.parseDouble(circle.group(3));
      drawn.add(
          new Hole(
              Double.parseDouble(circle.group(1)), -Double.parseDouble(circle.group(2)), diameter));
    }
    String sheet = file.getFileName().toString().replaceAll("sheet-|\\.svg", "");
    List<Hole> listed =
        HoleList.of(file.getParent().getParent()).inserts(sheet, "front").stream()
            .map(row -> new Hole(row.x(), row.y(), row.diameter()))
            .toList();
    assertThat(fromFirst(drawn)).containsExactlyInAnyOrderElementsOf(fromFirst(listed));
  }

  /** By their distances from the lowest and leftmost of them, to the hundredth. */
  private static List<String> fromFirst(List<Hole> holes) {
    double left = holes.stream().mapToDouble(Hole::x).min().orElseThrow();
    double low = holes.stream().mapToDouble(Hole::y).min().orElseThrow();
    return holes.stream()
        .map(
            hole ->
                Math.round((hole.x() - left) * 100)
                    + " "
                    + Math.round((hole.y() - low) * 100)
                    + " "
                    + Math.round(hole.diameter() * 100))
        .toList();
  }
}
