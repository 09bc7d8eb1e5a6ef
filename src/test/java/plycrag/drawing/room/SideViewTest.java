package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.WordsApart;
import plycrag.drawing.pen.Layers;

class SideViewTest {
  private static final double CLOSE = 0.01;

  private static final String CORNER =
      """
      [[facet]]
      name = "port"
      width = 1500
      length = 1200
      [[facet]]
      name = "starboard"
      beside = "port"
      turn = 90
      width = 1500
      length = 1200
      [room]
      ceiling = 2600
      """;

  /** Sections of all walls, the first from the left first. */
  private static List<Drawing> sections(String text) {
    CheckedLayout checked = Walls.judged(text);
    return checked.layout().runs().stream().map(run -> SideView.of(checked, run)).toList();
  }

  /** The heights of what is drawn in the ink of the ceiling, at the section's right end. */
  private static double height(Drawing section, String name) {
    Shape.Label label =
        labels(section).filter(one -> one.text().equals(name)).findFirst().orElseThrow();
    return section.shapes().stream()
        .filter(Shape.Line.class::isInstance)
        .map(Shape.Line.class::cast)
        .filter(line -> line.layer().equals(Layers.PARTS))
        .filter(line -> Math.abs(line.to().x() - label.at().x()) < CLOSE)
        .mapToDouble(line -> line.to().y())
        .filter(y -> Math.abs(y - label.at().y()) < 3 * section.scale())
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Shape.Label> labels(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast);
  }

  @Test
  void theCeilingIsAboveEveryWall() {
    assertThat(sections(CORNER))
        .extracting(section -> height(section, "ceiling"))
        .hasSize(2)
        .allMatch(height -> Math.abs(height - 2600) < CLOSE);
  }

  /**
   * The second wall stands 1500 mm to the right and its right end 1500 mm further out: what falls
   * 10° toward the climber falls 1500 tan 10° = 264.49 along it, and nothing out from it.
   */
  @Test
  void aCeilingThatFallsOutFallsAlongTheWallBeside() {
    Drawing section = sections(CORNER + "ceiling-pitch = -10\n").get(1);
    assertThat(height(section, "ceiling, left end")).isBetween(2600 - CLOSE, 2600 + CLOSE);
    assertThat(height(section, "ceiling, right end")).isBetween(2335.5, 2335.52);
  }

  /** It falls 26 mm, which on paper is less than letters are high: names stand above and below. */
  @Test
  void namesOfBothEndsAreApart() {
    sections(CORNER + "ceiling-pitch-across = -1\n").forEach(WordsApart::check);
  }

  /**
   * The upper edge falls 400 mm over 2000, as the ceiling does; at 20° 1600 mm are 1503.51 high.
   */
  @Test
  void theLowerEndOfAnUpperEdgeIsShownUnderItsCeiling() {
    String wall =
        """
        [[facet]]
        angle = 20
        outline = [[0, 0], [2000, 0], [2000, 1600], [0, 2000]]
        [room]
        ceiling = 2200
        """;
    assertThat(labels(sections(wall).get(0))).noneMatch(one -> one.text().equals("1503.5"));
    Drawing section = sections(wall + "ceiling-pitch-across = -10\n").get(0);
    assertThat(labels(section).map(Shape.Label::text))
        .contains("1503.5", "Dashed: the lower end of the upper edge.");
    assertThat(section.shapes())
        .filteredOn(shape -> shape instanceof Shape.Line line && isDashedAt(line, 1503.51))
        .hasSize(1);
  }

  private static boolean isDashedAt(Shape.Line line, double height) {
    return line.layer().equals(Layers.BEHIND) && Math.abs(line.from().y() - height) < CLOSE;
  }
}
