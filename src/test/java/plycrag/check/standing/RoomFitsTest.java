package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.check.Found;
import plycrag.finding.Finding;

/** What is too high is named, and what is told to mend it does. */
class RoomFitsTest {
  private static final String BOARD =
      """
      [wall]
      width = 1200
      fold-edges = "square"
      [[facet]]
      name = "kick"
      length = 300
      [[facet]]
      name = "board"
      angle = 40
      length = %s
      [room]
      ceiling = 3050
      [support]
      kind = "hinged"
      fixed-to = "masonry"
      angles = [20, 30, 40, 50]
      %s
      """;

  private static Found board(String length, String support) {
    return Found.by("room-fits", BOARD.formatted(length, support));
  }

  /** The number before some words of a cure. */
  private static String told(Finding finding, String before) {
    assertThat(finding.suggestion()).contains(before);
    return finding.suggestion().replaceAll(".* ([0-9.]+) mm " + before + ".*", "$1");
  }

  /** At 20° the board of 3048 mm ends above 3050 mm, and so does the ledger that it is held by. */
  @Test
  void aHingedBoardAndItsLedgerAreToldApart() {
    List<Finding> findings = board("3048", "").findings();
    assertThat(findings).extracting(Finding::first).containsExactly("board", "LG2");
    assertThat(findings.get(0).sentence())
        .isEqualTo("facet board is 152 mm too high for the ceiling at 20°");
    assertThat(findings.get(1).sentence())
        .isEqualTo("ledger LG2 is 56 mm too high for the ceiling");
    String attach = told(findings.get(1), "up its slope");
    List<Finding> held = board("3048", "attach = " + attach).findings();
    assertThat(held).extracting(Finding::first).containsExactly("board");
    String length = told(held.get(0), "up the slope");
    board(length, "attach = " + attach).isNothing();
  }

  @Test
  void aLedgerThatIsAnchoredTooHighIsToldToComeDown() {
    Found high = board("2400", "anchor-height = 3020").times(1).isError(true);
    Finding ledger = high.findings().get(0);
    assertThat(ledger.first()).isEqualTo("LG2");
    board("2400", "anchor-height = " + told(ledger, "above the floor")).isNothing();
  }

  /** What stands on a kick under a low beam of a ceiling cannot be made short enough. */
  @Test
  void whatCannotBeShortEnoughIsToStandLower() {
    String wall =
        """
        [wall]
        width = 1200
        [[facet]]
        name = "low"
        length = 1800
        [[facet]]
        name = "top"
        angle = 20
        length = 600
        [room]
        ceiling = 1700
        """;
    Found.by("room-fits", wall)
        .times(1)
        .suggests("make what facet top stands on lower ([[facet]] length, [wall] raise)");
    Found.by("room-fits", wall.replace("1800", "1000")).isNothing();
  }

  @Test
  void whatReachesThroughASideOfTheRoomIsNamed() {
    String wall = "[[facet]]\nname = \"main\"\nlength = 2000\nwidth = 1200\nangle = 30\n";
    Found.by("room-fits", wall + "[room]\nfront = 900\n")
        .times(1)
        .says("facet main reaches 100 mm through what ends the room on the front")
        .suggests(
            "let it lean out less ([[facet]] angle), or move the wall so that it has "
                + "1000 mm there ([room] front = 1000)");
    Found.by("room-fits", wall + "[room]\nfront = 1000\n").isNothing();
  }

  private static final String POST =
      """
      [[facet]]
      width = 2400
      length = 2400
      [[cutout]]
      left = 900
      low = 0
      width = 400
      height = 1000
      filled = true
      [[obstacle]]
      name = "post"
      left = %s
      out = -200
      width = 300
      depth = 200
      height = %s
      """;

  /** The opening is from 900 to 1300 and 1000 high, with timber of 45 round it. */
  @Test
  void whatStandsInAnOpeningIsClear() {
    Found.by("room-fits", POST.formatted("950", "1000")).isNothing();
    Found.by("room-fits", POST.formatted("895", "1000"))
        .times(1)
        .isError(true)
        .says("P1 overlaps post by 5 mm");
    Found.by("room-fits", POST.formatted("950", "1030")).times(1).isError(true);
  }
}
