package plycrag.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A stud of 45 mm on 600 mm reaches to 622.5 mm. */
class InsertAgainstTimberTest {

  @Test
  void passesAtTheLeastDistance() {
    // 640 - 622.5 - 26 / 2 = 4.5
    String toml = Found.bay("640", "300", "[clearance]", "insert-to-timber = 4.5");
    Found.by("insert-timber", toml).isNothing();
  }

  @Test
  void findsAFlangeOverTimber() {
    // 635 - 622.5 - 26 / 2 = -0.5, which is 4.5 short of 4: 5 on the marking grid of 1 mm
    Found.by("insert-timber", Found.bay("300, 635", "300"))
        .times(1)
        .isError(true)
        .at(635, 300)
        .between("main 64/30", "ST2")
        .measured(-0.5, 4)
        .says("the flange of insert main 64/30 overlaps stud ST2 by 0.5 mm; 4 mm must remain")
        .suggests("move column 2 right by 5 mm, or stud ST2 left by 5 mm");
  }

  @Test
  void findsABoltThatCouldMeetTimber() {
    // 640 - 622.5 - 40 / 2 = -2.5; the flange has 640 - 622.5 - 13 = 4.5 and is clear
    Found.by("insert-timber", Found.bay("640", "300", "bolt-zone = 40"))
        .times(1)
        .between("main 64/30", "ST2")
        .measured(-2.5, 2)
        .says("the bolt zone of insert main 64/30 overlaps stud ST2 by 2.5 mm; 2 mm must remain")
        .suggests("move column 1 right by 5 mm, or stud ST2 left by 5 mm");
  }

  @Test
  void doesNotSuggestToMoveAPlate() {
    // the bottom plate ends at 45 mm: 60 - 45 - 13 = 2
    Found.by("insert-timber", Found.bay("300", "60", "setback = 50"))
        .times(1)
        .between("main 30/6", "PL1")
        .measured(2, 4)
        .suggests("move row 1 up by 2 mm");
  }

  @Test
  void measuresToTheCornerBetweenStudAndPlateOnceForEach() {
    // 60 - 45 - 13 = 2 from the edge stud, and the same from the plate below
    Found.by("insert-timber", Found.bay("60", "60", "setback = 50")).times(2).measured(2, 4);
  }

  /**
   * A stud's slanting end, far away, does not change that its column is to move, by 22.5 + 13 + 4
   * to the grid; of two ways as short, left.
   */
  @Test
  void movesTheColumnFromAStudThatEndsAtAFold() {
    Found.by(
            "insert-timber",
            """
            [[facet]]
            width = 1200
            length = 600
            [[facet]]
            angle = 30
            width = 1200
            length = 1200
            [frame]
            stud-spacing = 600
            [inserts]
            pattern = "lines"
            columns = [600]
            rows = [300]
            setback = 0
            """)
        .times(2)
        .suggests("move column 1 left by 40 mm, or stud ST2 right by 40 mm");
  }

  /** Both patterns have a column 1: at 590 mm, and at 500 + 100 mm, in front of the stud at 600. */
  @Test
  void namesThePatternWhoseColumnIsMeant() {
    String zone =
        """
        [[zone]]
        name = "feet"
        left = 500
        low = 200
        width = 300
        height = 300
        pattern = "lines"
        columns = [100]
        rows = [100]
        """;
    Found found = Found.by("insert-timber", Found.bay("590", "900", zone)).times(2);
    found
        .between("main 60/30", "ST2")
        .suggests(MOVE.formatted("zone feet", "left", 40, "right", 40));
    assertThat(found.findings().get(1).suggestion())
        .isEqualTo(MOVE.formatted("facet main", "left", 30, "right", 30));
  }

  private static final String MOVE = "move column 1 of %s %s by %d mm, or stud ST2 %s by %d mm";
}
