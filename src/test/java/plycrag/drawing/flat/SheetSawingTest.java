package plycrag.drawing.flat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.WordsApart;
import plycrag.drawing.pen.Layers;
import plycrag.layout.sheets.LaidSheet;

class SheetSawingTest {

  /** Gussets in offcuts beside cuts, and an offcut so low that a number meets the sheet's edge. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "corner-trimmed-along-a-kink",
        "corner-with-a-kick-on-the-left",
        "roof-over-a-wall",
        "arete-with-a-tapered-facet"
      })
  void everyCutAndPartIsNamedClearOfAllElse(String wall) {
    check(Walls.judged(TestFiles.text("hard-walls/" + wall + ".toml")));
  }

  /** On sheets so long that their picture is small, gussets are narrower than letters are high. */
  @Test
  void whatIsTooSmallForItsMarkHasALeader() {
    String corner = TestFiles.text("hard-walls/corner-trimmed-along-a-kink.toml");
    CheckedLayout checked = Walls.judged(corner + "[sheet]\nlength = 5000\n");
    check(checked);
    assertThat(checked.layout().sheets())
        .flatExtracting(sheet -> SheetSawing.of(checked, sheet).shapes())
        .anyMatch(SheetSawingTest::isLeader);
  }

  private static boolean isLeader(Shape shape) {
    return shape instanceof Shape.Line line && line.layer().equals(Layers.DIMENSIONS);
  }

  private static void check(CheckedLayout checked) {
    for (LaidSheet sheet : checked.layout().sheets()) {
      Drawing drawing = SheetSawing.of(checked, sheet);
      WordsApart.check(drawing);
      WordsApart.checkLines(drawing);
      int cuts = sheet.stock().cutting().cuts().size();
      assertThat(words(drawing))
          .containsAll(IntStream.rangeClosed(1, cuts).mapToObj(String::valueOf).toList());
      checked
          .layout()
          .offcuts()
          .of(sheet)
          .forEach(part -> assertThat(words(drawing)).containsOnlyOnce(part.mark()));
    }
  }

  private static Stream<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast)
        .map(Shape.Label::text);
  }
}
