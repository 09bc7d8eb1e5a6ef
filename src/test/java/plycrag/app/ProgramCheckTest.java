package plycrag.app;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.files.OutputFile;

/** No program leaves the house that does not make what the layout asks for. */
class ProgramCheckTest {
  private static final String WALL =
      """
      [wall]
      unit = "%s"
      [[facet]]
      width = "1200 mm"
      length = "2400 mm"
      [inserts]
      when-blocked = "drop"
      [machine]
      z-zero = "%s"
      """;
  private static final String FIRST = "cnc/sheet-S1-front-t01.ngc";

  private static final Design.Judged GOOD = judged("mm", "spoilboard");
  private static final List<OutputFile> FILES = Deliverable.programs(GOOD);

  private static Design.Judged judged(String unit, String zero) {
    return (Design.Judged) Designs.of("wall.toml", WALL.formatted(unit, zero));
  }

  private static void check(Design.Judged wall, List<OutputFile> files) {
    ProgramRelease.require(wall.checked().layout(), files);
  }

  private static void refuses(List<OutputFile> programs, String... sentences) {
    assertThatThrownBy(() -> check(GOOD, programs))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContainingAll(sentences);
  }

  /** The files with the first program under a name, changed. */
  private static List<OutputFile> changed(String name, UnaryOperator<String> change) {
    List<OutputFile> all = new ArrayList<>();
    for (OutputFile file : FILES) {
      boolean first = file.path().equals(FIRST);
      all.add(
          first
              ? OutputFile.text(
                  name, change.apply(new String(file.content(), StandardCharsets.UTF_8)))
              : file);
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm spoilboard", "mm sheet-top", "in spoilboard", "in sheet-top"})
  void programsAsTheyArePass(String words) {
    String[] word = words.split(" ", -1);
    Design.Judged one = judged(word[0], word[1]);
    assertThatCode(() -> check(one, Deliverable.programs(one))).doesNotThrowAnyException();
  }

  @Test
  void aWrongDepthIsToldByProgramAndLine() {
    refuses(
        changed(FIRST, text -> text.replaceFirst("G1 Z-0.5", "G1 Z-0.4")),
        FIRST + ", line 18: hole main ",
        " goes to Z-0.4, not Z-0.5");
  }

  @Test
  void aMissingProgramIsTold() {
    refuses(
        FILES.stream().filter(file -> !file.path().equals(FIRST)).toList(),
        "sheet S1, front: hole main ",
        " is not made",
        " more");
  }

  @Test
  void aProgramForNoSheetIsTold() {
    refuses(
        changed("cnc/sheet-S99-front-t01.ngc", text -> text),
        "cnc/sheet-S99-front-t01.ngc: is for no sheet");
    refuses(changed("cnc/first.ngc", text -> text), "cnc/first.ngc: is for no sheet");
  }

  @Test
  void aToolThatTheMachineDoesNotHoldIsTold() {
    refuses(
        changed("cnc/sheet-S1-front-t07.ngc", text -> text),
        "cnc/sheet-S1-front-t07.ngc, line 14: not the speed of tool 0");
  }
}
