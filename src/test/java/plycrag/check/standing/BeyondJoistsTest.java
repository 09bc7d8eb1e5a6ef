package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.joints.Hardware;
import plycrag.layout.joints.Hardware.Anchored;

/**
 * A wall of 1200 mm hung under joists 400 mm apart, the outer hangers' middles at 22.5 and 1177.5.
 */
class BeyondJoistsTest {
  private static String hung(String room) {
    return """
        [wall]
        raise = 400
        [[facet]]
        angle = 30
        length = 2000
        width = 1200
        [support]
        kind = "hung"
        [room]
        ceiling = 3000
        ceiling-members = "joists"
        joist-section = [50, 200]
        joist-span = 3000
        """
        + room;
  }

  /** Joists at 200 + 400 k: the ledger goes on to those at -200 and 1400, and 60 mm further. */
  @Test
  void aLedgerGoesOnToTheNextJoist() {
    String wide = hung("joist-first = 200\n");
    Found.by("support-holds", wide).isNothing();
    assertThat(ledgerLength(Walls.laidOut(wide))).isEqualTo(1720);
  }

  /** With a wall of the room 200 mm to the left there is no room for 222.5 and 60. */
  @Test
  void aHangerBeyondTheLastJoistIsRefused() {
    Found.by("support-holds", hung("joist-first = 200\nleft = 200\n"))
        .times(1)
        .isError(true)
        .says("hanger HA1 stands 178 mm beyond the last joist that ledger LG1 is fixed to");
  }

  /** At 22 and 1222 joists lie over the first hanger, under which an anchor's head is let in. */
  @Test
  void anAnchorUnderAHangerIsLetIn() {
    Layout over = Walls.laidOut(hung("joist-first = 22\n"));
    assertThat(
            over.hardware().stream()
                .map(Hardware::form)
                .filter(Anchored.class::isInstance)
                .map(Anchored.class::cast)
                .filter(anchored -> anchored.anchor().member().equals("LG1"))
                .filter(anchored -> anchored.sunk() > 0))
        .hasSize(1)
        .allSatisfy(
            anchored -> {
              assertThat(anchored.sunk()).isEqualTo(10);
              assertThat(anchored.bolt().line().grip()).isCloseTo(80, within(1e-9));
            });
    Found.by("hardware-clear", hung("joist-first = 22\n")).isNothing();
  }

  private static double ledgerLength(Layout layout) {
    return layout.support().orElseThrow().members().stream()
        .filter(placed -> placed.member().mark().equals("LG1"))
        .mapToDouble(placed -> placed.member().box().getWidth())
        .sum();
  }
}
