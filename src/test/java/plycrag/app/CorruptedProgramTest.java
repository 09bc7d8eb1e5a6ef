package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a program may suffer and still look like one: none of it leaves the house. */
class CorruptedProgramTest {
  private static final String PINS = "cnc/sheet-S1-back-t01.ngc";
  private static final String MARKS = "cnc/sheet-S1-back-t02.ngc";
  private static final String SCREWS = "cnc/sheet-S1-front-t03.ngc";
  private static final String OUTLINES = "cnc/sheet-S1-front-t04.ngc";

  private static void refuses(String path, UnaryOperator<String> change, String sentence) {
    String changed = change.apply(CorruptedPrograms.text(path));
    assertThat(changed).isNotEqualTo(CorruptedPrograms.text(path));
    assertThatThrownBy(() -> CorruptedPrograms.release(path, changed))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void asTheyArePass() {
    for (String path : List.of(PINS, MARKS, SCREWS, OUTLINES)) {
      assertThatCode(() -> CorruptedPrograms.release(path, CorruptedPrograms.text(path)))
          .doesNotThrowAnyException();
    }
  }

  /** The tool stays up over tabs at Z4. */
  @Test
  void tabsThatAreMissingThinOrShortAreTold() {
    refuses(OUTLINES, text -> lowered(text, "-0.5"), "is held by 0 bridges");
    refuses(OUTLINES, text -> lowered(text, "0.1"), "is held by 0 bridges");
    refuses(OUTLINES, CorruptedProgramTest::shortened, "is held by 0 bridges");
  }

  /** Down on a slant where the tool is to stay up: a part of one tab is gone. */
  @Test
  void aTabThatIsCrossedOnASlantIsTold() {
    refuses(OUTLINES, CorruptedProgramTest::slanted, "bridges, not by");
  }

  private static String slanted(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int at = 0;
    while (!lines.get(at).contains(" Z4. ") || !lines.get(at + 2).contains(" Z-0.5 ")) {
      at++;
    }
    lines.remove(at + 1);
    return String.join("\n", lines);
  }

  /** Every rise to a tab, and what follows on it, to another height. */
  private static String lowered(String text, String height) {
    return text.replace("Z4. ", "Z" + height + " ");
  }

  /** Down again 1 mm after every rise: from a tab along X its end is drawn near. */
  private static String shortened(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    for (int at = 1; at + 2 < lines.size(); at++) {
      if (lines.get(at).contains(" Z4. ") && lines.get(at + 2).contains(" Z-0.5 ")) {
        String down = lines.get(at + 2).replaceFirst("X\\S+ Y\\S+", place(lines.get(at)));
        lines.add(at + 1, down);
        at += 3;
      }
    }
    return String.join("\n", lines);
  }

  private static String place(String line) {
    return Pattern.compile("X\\S+ Y\\S+").matcher(line).results().findFirst().orElseThrow().group();
  }

  /** Passes of 4.625 mm end at 13.375, 8.75, 4.125 and -0.5. */
  @Test
  void passesThatAreTooDeepAreTold() {
    String deep = "goes deeper than the tool cuts at a time";
    refuses(OUTLINES, text -> text.replace("Z8.75 ", "Z13.375 "), deep);
    refuses(OUTLINES, text -> text.replace("Z13.375 ", "Z8.75 "), deep);
    refuses(OUTLINES, text -> text.replace("Z13.375 ", "Z12.9 "), deep);
  }

  /** In the first pass round the window, at the end of its ramp: no pass after it is cut there. */
  @Test
  void aWayThatLeavesTheOutlineForTheWasteIsTold() {
    refuses(
        OUTLINES,
        text -> text.replace("X289.25 Y243. Z13.375", "X289.25 Y243.79 Z13.375"),
        "leaves the way beside an outline");
  }

  @Test
  void theWrongWayRoundIsTold() {
    refuses(OUTLINES, CorruptedProgramTest::reversed, "the wrong way round");
  }

  /** The way round the piece, the last that is cut, from its end to its beginning. */
  private static String reversed(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int end = lines.size() - 5;
    int begin = end;
    while (lines.get(begin - 1).startsWith("G1 X")) {
      begin--;
    }
    List<String> way = new ArrayList<>(lines.subList(begin + 8, end + 1));
    Collections.reverse(way);
    for (int at = 0; at < way.size(); at++) {
      lines.set(begin + 8 + at, way.get(at).replaceFirst(" Z\\S+", ""));
    }
    return String.join("\n", lines);
  }

  /** The program's last cut moved before its first. */
  @Test
  void anOutlineBeforeItsHolesIsTold() {
    refuses(
        OUTLINES,
        text -> {
          int first = text.indexOf("G0 X");
          int last = text.lastIndexOf("G0 X");
          int end = text.lastIndexOf("G0 Z43.");
          return text.substring(0, first)
              + text.substring(last, end)
              + text.substring(first, last)
              + text.substring(end);
        },
        "after that is cut out");
  }

  @Test
  void pecksThatAreMissingAreTold() {
    refuses(
        SCREWS,
        text -> text.replaceAll("G1 Z(17|11|5)\\. F600\\.\nG0 Z23\\.\nG0 Z\\S+\n", ""),
        "without coming out for its chips");
  }

  /** Down to the bottom at once, and round there. */
  @Test
  void aPlungeForASpiralIsTold() {
    refuses(
        OUTLINES,
        text -> text.replaceFirst("G1 Z18\\. F\\S+\n(G3[^\n]* Z[^\n]*\n)+", "G1 Z-0.5 F600.\n"),
        "goes deeper than the tool cuts at a time");
  }

  /** About the middle of its box, so that it still fills that. */
  @Test
  void lettersThatAreMirroredAreTold() {
    refuses(
        MARKS,
        text -> {
          List<Double> xs =
              Pattern.compile("X(\\S+)")
                  .matcher(text)
                  .results()
                  .map(found -> Double.valueOf(found.group(1)))
                  .collect(Collectors.toList());
          double about = Collections.min(xs) + Collections.max(xs);
          return Pattern.compile("X(\\S+)")
              .matcher(text)
              .replaceAll(
                  found ->
                      "X"
                          + Math.round((about - Double.parseDouble(found.group(1))) * 1000)
                              / 1000.0);
        },
        "is not engraved");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TOOL T2|TOOL T1",
        "DIAMETER 6|DIAMETER 8",
        "LOWER LEFT|LOWER RIGHT",
        "SHEET S1|SHEET S2",
        "FRONT FACE|BACK FACE",
        "18 THICK|15 THICK",
        "MILLIMETRES|INCHES",
        "REVISION |REVISION 0",
        "OF 4|OF 3",
        "TABS 12 LONG|TABS 2 LONG",
        "Z0 SPOILBOARD|Z0 SHEET TOP",
        "(CAUTION: HOLD THE SHEET DOWN. PROTECT EYES AND EARS AND LUNGS)|",
        "RAISED BY 24|RAISED BY 2"
      })
  void headsThatSayAnotherThingAreTold(String good, String bad) {
    String other = bad == null ? "" : bad;
    refuses(OUTLINES, text -> text.replaceFirst(Pattern.quote(good), other), "does not ");
  }

  @Test
  void movesThatAreFarTooHighAreTold() {
    refuses(OUTLINES, text -> text.replace("Z43.", "Z430."), "rises above all that is told");
    refuses(SCREWS, text -> text.replaceFirst("Z23\\.", "Z230."), "rises above all that is told");
  }
}
