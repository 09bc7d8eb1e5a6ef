package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import plycrag.layout.sheets.StrokeFont.Stroke;

/** Letters 12 mm high, so that a step of the grid is 2 mm and a letter 8 mm wide. */
class StrokeFontTest {
  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-_";

  private static List<Stroke> letter(char letter) {
    return StrokeFont.strokes(String.valueOf(letter), 12);
  }

  @Test
  void everyLetterStaysInItsCellAndHasNoPointTwiceOnEnd() {
    for (int which = 0; which < ALL.length(); which++) {
      char letter = ALL.charAt(which);
      assertThat(letter(letter)).as(String.valueOf(letter)).isNotEmpty();
      for (Stroke stroke : letter(letter)) {
        assertThat(stroke.points()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(stroke.points())
            .allMatch(at -> at.x >= 0 && at.x <= 8 && at.y >= 0 && at.y <= 12);
        for (int at = 1; at < stroke.points().size(); at++) {
          assertThat(stroke.points().get(at)).isNotEqualTo(stroke.points().get(at - 1));
        }
      }
    }
  }

  @Test
  void noTwoLettersLookAlike() {
    List<List<Stroke>> letters = ALL.chars().mapToObj(one -> letter((char) one)).toList();
    assertThat(letters).doesNotHaveDuplicates();
    assertThat(letter('O')).isNotEqualTo(letter('0'));
  }

  /** Capitals and digits reach from the line to their height; marks are found by that. */
  @Test
  void capitalsAndDigitsAreAsHighAsAsked() {
    for (int which = 0; which < 36; which++) {
      char letter = ALL.charAt(which);
      List<Double> heights =
          letter(letter).stream()
              .flatMap(stroke -> stroke.points().stream())
              .map(at -> at.y)
              .collect(Collectors.toList());
      assertThat(heights).as(String.valueOf(letter)).contains(0.0, 12.0);
    }
  }

  /** An L by hand: down its stem, along its foot; the second letter begins one height on. */
  @Test
  void textRunsToTheRight() {
    assertThat(StrokeFont.strokes("-L", 12))
        .containsExactly(
            new Stroke(List.of(new Coordinate(2, 6), new Coordinate(6, 6))),
            new Stroke(
                List.of(new Coordinate(12, 12), new Coordinate(12, 0), new Coordinate(20, 0))));
    assertThat(StrokeFont.strokes(" ", 12)).isEmpty();
  }

  @Test
  void hasWhatMarksAreMadeOf() {
    assertThat("P1LOW_WALL-2.5".chars().mapToObj(Character::toString))
        .noneMatch(letter -> StrokeFont.strokes(letter, 12).isEmpty());
  }
}
