package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;

/** Worked out by hand beside each check; from above the climber's way is down. */
class CornerDetailTest {
  private static final String CORNER =
      """
      [[facet]]
      name = "one"
      length = 1200
      width = 1200
      [[facet]]
      name = "two"
      beside = "one"
      turn = %d
      length = 1200
      width = 1200
      [inserts]
      when-blocked = "drop"
      """;

  private static Drawing only(int turn) {
    List<View> corners = corners(CORNER.formatted(turn));
    assertThat(corners).hasSize(1);
    return corners.get(0).drawing();
  }

  private static List<View> corners(String wall) {
    return Walls.portfolio(Walls.judged(wall)).views(ViewKind.CORNER);
  }

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  /**
   * Two upright walls at a right angle: the sheets' mitre runs from the corner of the faces, 1200
   * along the first, to 18 behind both.
   */
  @Test
  void theMitreOfSquareWallsRunsAtFortyFiveDegrees() {
    Drawing inside = only(90);
    assertThat(
            inside.shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast))
        .anyMatch(line -> isMitre(line));
    assertThat(words(inside))
        .contains("The climbing faces enclose 90°.", "one", "two")
        .anyMatch(text -> text.contains("the blade tilted 45° from square, longer at the back"));
  }

  private static boolean isMitre(Shape.Line line) {
    double dx = line.to().x() - line.from().x();
    double dy = line.to().y() - line.from().y();
    boolean atCorner =
        Math.abs(line.from().x() - 1200) < 0.01 || Math.abs(line.to().x() - 1200) < 0.01;
    return atCorner && Math.abs(Math.abs(dx) - 18) < 0.01 && Math.abs(Math.abs(dy) - 18) < 0.01;
  }

  @Test
  void facesTurnedApartAreLongerInFront() {
    assertThat(words(only(-60)))
        .contains("The climbing faces enclose 240°.")
        .anyMatch(text -> text.contains("the blade tilted 30° from square, longer at the front"));
  }

  /** Leaning walls meet on slanting rakes; the cut passes the blocking behind the seam between. */
  @Test
  void noBlockingIsCutAlongWhereWallsTaper() {
    List<View> corners =
        corners(
            """
            [[facet]]
            name = "one"
            angle = 15
            length = 2440
            width = 2400
            [[facet]]
            name = "two"
            beside = "one"
            turn = 90
            angle = 15
            length = 2440
            width = 1800
            [frame]
            stud-spacing = 600
            """);
    assertThat(words(corners.get(0).drawing()))
        .anyMatch(word -> word.matches("RK[0-9]+"))
        .noneMatch(word -> word.matches("BL[0-9]+"));
  }

  /** In the middle of the corner an opening takes the side of the first wall, with its stud. */
  @Test
  void theCutPassesAnOpeningInTheCorner() {
    String opening =
        """
        [[cutout]]
        facet = "one"
        left = 1000
        low = 0
        width = 200
        height = 700
        """;
    List<String> words = words(corners(CORNER.formatted(0) + opening).get(0).drawing());
    assertThat(words).filteredOn(word -> word.matches("ST[0-9]+")).hasSize(2);
  }

  @Test
  void aWallWithoutCornersHasNone() {
    assertThat(corners("[[facet]]\n")).isEmpty();
  }
}
