package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A piece with a slot of 20 by 300 mm, cut through 18.5 mm. */
class OutlineToolTest {
  private static final String SLOTTED =
      """
      [[facet]]
      width = 1200
      length = 1200
      [[cutout]]
      left = 700
      low = 700
      width = 20
      height = 300
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 250]
      [machine]
      outlines = "tabs"
      """;

  private static String mill(double diameter, double length) {
    String tool = "[[tool]]\nkind = \"end-mill\"\ndiameter = %s\nlength = %s\n";
    return tool.formatted(diameter, length);
  }

  /** Laid so far apart as the tool needs, gussets on offcuts too. */
  private static String routed(double diameter) {
    return "[nesting]\ncut-with = \"router\"\ntool-diameter = " + diameter + "\n";
  }

  @Test
  void passesWhereNothingIsCutOut() {
    Found.by("outline-tool", SLOTTED.replace("tabs", "none")).isNothing();
  }

  @Test
  void tellsOfNoToolThatReaches() {
    Found.by("outline-tool", SLOTTED + mill(6, 18))
        .times(1)
        .isError(true)
        .says(
            "pieces are to be cut out, and no end mill is told that reaches 18.5 mm deep and may"
                + " turn at its speed");
  }

  /** The four corners of the slot. */
  @Test
  void tellsOfCornersThatStayRound() {
    Found.by("outline-tool", SLOTTED + mill(6, 20) + routed(6))
        .times(1)
        .isError(false)
        .says("4 inside corners of piece P1 stay round, with a radius of 3 mm");
  }

  @Test
  void tellsOfASlotNarrowerThanTheTool() {
    Found.by("outline-tool", SLOTTED + mill(22, 30) + routed(22))
        .times(1)
        .isError(true)
        .says("end mill T1 is 22 mm wide and does not get round piece P1 everywhere");
  }

  /** Gussets on an offcut, a saw's 3 mm from the piece. */
  @Test
  void tellsOfOffcutsNearerThanTheTool() {
    Found.by("outline-tool", SLOTTED + mill(6, 20))
        .isError(true)
        .says("end mill T1 is 6 mm wide and would cut into piece GU1 on its way round piece P1");
  }

  /** Two pieces on one sheet, a saw's 3 mm apart; a router's 6 mm and more leave both whole. */
  @Test
  void tellsOfPiecesNearerThanTheTool() {
    String two =
        """
        [[facet]]
        width = 900
        length = 900
        [[facet]]
        width = 900
        length = 900
        [inserts]
        pattern = "lines"
        columns = [100, 300]
        rows = [120, 250]
        [machine]
        outlines = "skin"
        """;
    Found.by("outline-tool", two + mill(6, 20))
        .isError(true)
        .between("P1", "")
        .says("end mill T1 is 6 mm wide and would cut into piece P2 on its way round piece P1");
    Found.by("outline-tool", two + "[nesting]\ncut-with = \"router\"\n" + mill(6, 20)).isNothing();
  }
}
