package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.files.OutputFile;

/** The plank store: marks and pins from behind, then the sheet is turned over about X 1220. */
class TwoFacesTest {
  private static final Design.Judged WALL =
      (Design.Judged)
          Designs.of("plank-store.toml", TestFiles.read(Path.of("params/plank-store.toml")));
  private static final List<OutputFile> FILES = Deliverable.programs(WALL);

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }

  private String named(String path) {
    return text(FILES.stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow());
  }

  private void refuses(String program, UnaryOperator<String> change, String sentence) {
    List<OutputFile> all = new ArrayList<>();
    for (OutputFile file : FILES) {
      boolean meant = file.path().equals(program);
      all.add(meant ? OutputFile.text(program, change.apply(text(file))) : file);
    }
    assertThatThrownBy(() -> ProgramRelease.require(WALL.checked().layout(), all))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void bothFacesHaveProgramsAndASetUpSheet() {
    assertThat(FILES)
        .extracting(OutputFile::path)
        .filteredOn(path -> path.startsWith("cnc/sheet-S1-back"))
        .containsExactlyInAnyOrder(
            "cnc/sheet-S1-back-t01.ngc", "cnc/sheet-S1-back-t02.ngc", "cnc/sheet-S1-back.html");
    assertThat(named("cnc/sheet-S1-back.html"))
        .contains("first of two", "pins of 6 mm", "about the upright line X 1220", "8 mm further");
    assertThat(named("cnc/sheet-S1-front.html"))
        .contains("second of two", "about the upright line X 1220")
        .doesNotContain("Marks engraved");
    assertThat(named("cnc/sheet-S1-back-t01.ngc"))
        .contains("(FIRST FACE. AFTERWARDS TURN OVER LEFT TO RIGHT ABOUT X 1220)")
        .doesNotContain("OUTLINES");
  }

  /** Both pins on the line, 8 mm deeper than what goes through; nowhere else. */
  @Test
  void pinsStandOnTheLine() {
    String pins = named("cnc/sheet-S1-back-t01.ngc");
    assertThat(Pattern.compile("G0 X1220. Y").matcher(pins).results()).hasSize(2);
    assertThat(Pattern.compile("G0 X").matcher(pins).results()).hasSize(2);
    assertThat(Pattern.compile("G1 Z-8.5 F").matcher(pins).results()).hasSize(2);
  }

  @Test
  void whatIsNotAsAskedIsRefused() {
    String pins = "cnc/sheet-S1-back-t01.ngc";
    refuses(pins, text -> text.replace("X1220.", "X1220.01"), "hole pin 1 is off by 0.01");
    refuses(pins, text -> text.replace("Z-8.5", "Z-8.4"), "hole pin 1 goes to Z-8.4, not Z-8.5");
    refuses(pins, text -> text.replace("Z-8.5", "Z-9."), "a cut below the lowest that is allowed");
    String marks = "cnc/sheet-S1-back-t02.ngc";
    refuses(marks, text -> text.replace("Z17.6", "Z17.5"), "to another depth");
    refuses(marks, text -> text.replace("Y76.", "Y77."), "the mark of piece P1 is not engraved");
  }
}
