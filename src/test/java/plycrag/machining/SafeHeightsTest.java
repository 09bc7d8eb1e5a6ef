package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.document.Move;

/** Follows the tool through a program, whatever the heights. */
class SafeHeightsTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [inserts]
      pattern = "lines"
      columns = [100, 300, 900]
      rows = [100, 300, 700]
      [machine]
      breakthrough = 0.75
      """;

  /** From the sheet of 18 mm: its top, the board below, and the two heights above its top. */
  @ParameterizedTest
  @CsvSource({
    "spoilboard, 5, 25, 18",
    "spoilboard, 5, 5, 18",
    "sheet-top, 5, 25, 0",
    "sheet-top, 12, 12, 0"
  })
  void movesAcrossAboveTheClearanceAndCutsOnlyStraightDown(
      String zero, double clearance, double safe, double top) {
    String words = "z-zero = \"%s\"\nclearance-height = %s\nsafe-height = %s\n";
    DrillProgram program = only(WALL + words.formatted(zero, clearance, safe));
    double z = Double.NaN;
    boolean turns = false;
    for (Move move : Steps.of(program)) {
      if (move instanceof Move.RapidZ up) {
        assertThat(up.z()).isGreaterThanOrEqualTo(top + clearance);
        z = up.z();
      } else if (move instanceof Move.Plunge plunge) {
        assertThat(turns).isTrue();
        assertThat(z).isEqualTo(top + clearance);
        assertThat(plunge.z()).isEqualTo(top - 18 - 0.75);
        z = plunge.z();
      } else if (move instanceof Move.RapidXy) {
        assertThat(z).isGreaterThanOrEqualTo(top + clearance);
      } else if (move instanceof Move.SpindleOn) {
        assertThat(z).isEqualTo(top + safe);
        turns = true;
      } else if (move instanceof Move.SpindleOff) {
        assertThat(z).isEqualTo(top + safe);
        turns = false;
      }
    }
    assertThat(turns).isFalse();
  }

  /** RapidZ, SpindleOn, Dwell; across, down, up for each of nine holes; up, SpindleOff. */
  @ParameterizedTest
  @CsvSource({
    "25, ZSD XZPZ XPZ XPZ XPZ XPZ XPZ XPZ XPZ XPZ ZO",
    "5, ZSD XPZ XPZ XPZ XPZ XPZ XPZ XPZ XPZ XPZ ZO"
  })
  void keepsTheOrderOfMoves(double safe, String order) {
    DrillProgram program = only(WALL + "clearance-height = 5\nsafe-height = " + safe);
    assertThat(
            Steps.of(program).stream().map(SafeHeightsTest::letter).collect(Collectors.joining()))
        .isEqualTo(order.replace(" ", ""));
  }

  private static String letter(Move move) {
    if (move instanceof Move.RapidZ) {
      return "Z";
    }
    if (move instanceof Move.RapidXy) {
      return "X";
    }
    if (move instanceof Move.Plunge) {
      return "P";
    }
    if (move instanceof Move.Dwell) {
      return "D";
    }
    return move instanceof Move.SpindleOn ? "S" : "O";
  }

  private static DrillProgram only(String toml) {
    List<DrillProgram> programs = DrillPrograms.of((ApprovedLayout) Walls.judged(toml));
    assertThat(programs).hasSize(1);
    return programs.get(0);
  }
}
