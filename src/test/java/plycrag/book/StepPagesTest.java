package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.Walls;
import plycrag.document.Book.Step;
import plycrag.document.Book.Taken;

/** The steps as people read them. */
class StepPagesTest {
  /** Frames of 2000 up the slope at 20°, posts 800 behind, knee braces along. */
  private static final String WALL =
      """
      [wall]
      raise = 250
      [[facet]]
      name = "main"
      angle = 20
      length = 2000
      width = 1200
      [frame]
      stud-spacing = 700
      [support]
      kind = "freestanding"
      lateral = "knee-braces"
      behind = 800
      """;

  private static List<Step> steps(String toml) {
    return new StepPages(Walls.judged(toml)).blocks().stream().map(Step.class::cast).toList();
  }

  private static Step step(String heading) {
    return steps(WALL).stream()
        .filter(one -> one.heading().startsWith(heading))
        .findFirst()
        .orElseThrow();
  }

  /** The root of 1200² + 2000² is 2332.4; studs are two plates of 45 shorter than 2000. */
  @Test
  void aFrameIsSquaredByItsDiagonals() {
    String alone = "[[facet]]\nlength = 2000\nwidth = 1200\n[frame]\nstud-spacing = 700\n";
    Step step = steps(alone).get(1);
    assertThat(step.checks()).contains("both diagonals 2332 mm");
    assertThat(step.taken())
        .extracting(one -> one.count() + " " + one.what())
        .contains("PL1, PL2 plate, 45 x 90, 1200 mm", "ST1, ST2, ST3 stud, 45 x 90, 1910 mm");
  }

  /**
   * 2000 · sin 20° = 684.0; its top stands 250 + 2000 · cos 20° = 2129.4 above the floor, and two
   * thirds of that times the root of 2 are 2007.6.
   */
  @Test
  void aRaisedFrameIsProppedAndItsLeanIsToldTwice() {
    Step step = step("Raise the frame of main");
    assertThat(step.checks())
        .contains("20° from plumb: its upper edge stands 684 mm before its lower one");
    assertThat(step.words().toString()).contains("a stick of about 2008 mm");
  }

  @Test
  void aCautionStandsOnceBeforeItsFirstStep() {
    List<Step> steps = steps(WALL);
    List<String> cautions =
        steps.stream().flatMap(one -> one.caution().stream()).map(one -> one.word()).toList();
    assertThat(cautions).doesNotHaveDuplicates().contains("Lifting.", "Matting.", "Sawing.");
    assertThat(steps.get(2).heading()).startsWith("Make the side frames");
    assertThat(steps.get(2).caution().orElseThrow().word()).isEqualTo("Lifting.");
  }

  /** Of a hammered-in insert nothing is screwed on. */
  @Test
  void insertsAreSetAsTheyAreMade() {
    assertThat(step("Finish the sheets").words().toString()).contains("draw each in with a bolt");
    List<Step> screwed =
        steps(WALL + "[inserts]\nkind = \"screw-on\"\n").stream()
            .filter(one -> one.heading().startsWith("Finish the sheets"))
            .toList();
    assertThat(screwed.get(0).words().toString()).contains("screw each flange on flat");
  }

  /** Steps are numbered through, and each in which something is set has its picture. */
  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void everySampleIsBuiltStepByStep(Path sample) {
    List<Step> steps =
        new StepPages(Walls.judged(sample)).blocks().stream().map(Step.class::cast).toList();
    List<Integer> numbers = new ArrayList<>();
    for (Step step : steps) {
      numbers.add(step.number());
      assertThat(step.words()).as(step.heading()).isNotEmpty().hasSizeLessThanOrEqualTo(3);
      assertThat(step.checks()).as(step.heading()).isNotEmpty();
      assertThat(step.taken()).extracting(Taken::count).doesNotContain("");
      boolean sets = step.heading().matches("(Join|Screw the sheets|Raise|Make).*");
      assertThat(step.picture().isPresent() || !sets).as(step.heading()).isTrue();
    }
    for (int at = 0; at < numbers.size(); at++) {
      assertThat(numbers.get(at)).isEqualTo(at + 1);
    }
  }
}
