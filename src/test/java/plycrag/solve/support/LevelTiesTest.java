package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Ties to a wall 200 behind y = 0, whose ledgers of 40 have their face at -200 + 40 = -160. */
class LevelTiesTest {
  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final BackEdge KICK = back("kick", 0, 0, 0, 0, 300);
  private static final BackEdge MAIN = back("main", 37, 0, 300, 1500, 2300);

  /** At 300 over 200, at 2300 over 2200; the second ends at 1425 and 1500 on the back. */
  @Test
  void everyLevelHasALedgerAndATieAStation() {
    SupportFrame frame = FixedTies.of(site(TWO, 600, KICK, MAIN), 200);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 200, 640 200, 640 300, 0 300", "0 2200, 640 2200, 640 2300, 0 2300");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == -160 && ledger.depth() == 40);
    assertThat(timbers(frame, TimberUse.TIE))
        .extracting(Sections::side)
        .containsExactly(
            "-160 200, 0 200, 0 300, -160 300",
            "-160 200, 0 200, 0 300, -160 300",
            "-160 2200, 1425 2200, 1500 2300, -160 2300",
            "-160 2200, 1425 2200, 1500 2300, -160 2300");
    assertThat(meetings(frame, TimberUse.TIE).subList(2, 6))
        .containsExactly(
            "TIE on LEDGER at -160 250 along 100",
            "TIE on kick at 0 250 along 100",
            "TIE on LEDGER at -160 2250 along 100",
            "TIE on main at 1462.5 2250 along 100");
    assertThat(frame.unheld()).isEmpty();
    assertThat(frame.sways()).isFalse();
  }

  /** Studs at 0 and 600 hold the upper facet, those at 700 and 1200 the one below it. */
  @Test
  void aLevelWithStationsOfItsOwnHasALedgerThatReachesThem() {
    BackEdge aside = new BackEdge("kick", 0, KICK.low(), KICK.high(), List.of(700.0, 1200.0), 0);
    SupportFrame frame = FixedTies.of(site(TWO, 600, aside, MAIN), 200);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly(
            "700 200, 1240 200, 1240 300, 700 300", "0 2200, 640 2200, 640 2300, 0 2300");
  }

  /** 100 deep: the second level lies on the first's 300 if it is at 400, not at 399. */
  @Test
  void aLevelNeedsRoomAboveTheOneBelow() {
    BackEdge touching = back("main", 37, 0, 300, 75, 400);
    assertThat(timbers(FixedTies.of(site(TWO, 600, KICK, touching), 200), TimberUse.TIE))
        .hasSize(4);
    BackEdge low = back("main", 37, 0, 300, 74.25, 399);
    assertThat(timbers(FixedTies.of(site(TWO, 600, KICK, low), 200), TimberUse.TIE)).hasSize(2);
    assertThat(
            timbers(FixedTies.of(site(TWO, 600, back("low", 0, 0, 0, 0, 100)), 200), TimberUse.TIE))
        .hasSize(2);
    assertThat(
            timbers(FixedTies.of(site(TWO, 600, back("low", 0, 0, 0, 0, 99)), 200), TimberUse.TIE))
        .isEmpty();
  }

  @Test
  void aRoofIsNotHeldByTies() {
    BackEdge roof = back("roof", 61, 1500, 2300, 2500, 2850);
    SupportFrame frame = FixedTies.of(site(TWO, 600, KICK, roof), 200);
    assertThat(frame.unheld()).extracting(Unheld::facet).containsExactly("roof");
    assertThat(timbers(frame, TimberUse.TIE)).hasSize(2);
  }

  /** Half of 100 below and above 1200; the kick is tied as it would be without a hinge. */
  @Test
  void aHingedWallHasALedgerWhereItIsHeld() {
    SupportFrame frame = HingedFoot.of(site(TWO, 600, KICK, MAIN), 200, 1200);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 200, 640 200, 640 300, 0 300", "0 1150, 640 1150, 640 1250, 0 1250");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == -160 && ledger.depth() == 40);
    assertThat(timbers(frame, TimberUse.TIE)).hasSize(2);
  }

  /** A tie of 100 fits under 100 and not under 99; on a roof none ends. */
  @Test
  void aHingedFootIsTiedWhereATieFits() {
    BackEdge just = back("kick", 0, 0, 0, 0, 100);
    assertThat(HingedFoot.of(site(TWO, 600, just, MAIN), 200, 1200).unheld()).isEmpty();
    BackEdge low = back("kick", 0, 0, 0, 0, 99);
    SupportFrame frame = HingedFoot.of(site(TWO, 600, low, MAIN), 200, 1200);
    assertThat(frame.unheld()).extracting(Unheld::facet).containsExactly("kick");
    assertThat(timbers(frame, TimberUse.TIE)).isEmpty();
    BackEdge steep = back("kick", 61, 0, 0, 400, 222);
    assertThat(HingedFoot.of(site(TWO, 600, steep, MAIN), 200, 1200).unheld())
        .extracting(Unheld::facet)
        .containsExactly("kick");
  }
}
