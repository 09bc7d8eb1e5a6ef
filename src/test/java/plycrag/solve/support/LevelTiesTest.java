package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Direction.Span;

/**
 * Ties to a wall 200 behind y = 0, whose ledgers of 40 have their face at -200 + 40 = -160. The
 * middle of a tie of 100 is 40 (a plate) + 120 + 50 = 210 below an edge, along the back; on a frame
 * of less than twice that in its middle.
 */
class LevelTiesTest {
  private static final Span NOTHING = new Span(0, 0);

  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final BackEdge KICK = back("kick", 0, 0, 0, 0, 300);
  private static final BackEdge MAIN = back("main", 37, 0, 300, 1500, 2300);

  /**
   * In the middle of the kick's 300, from 100 to 200. On the main facet, 4 up for 5 along it, 210 ·
   * 4/5 = 168 below 2300: from 2082 to 2182, which is (2082 - 300) · 3/4 = 1336.5 and 1411.5 out.
   */
  @Test
  void everyLevelHasALedgerAndATieAStation() {
    SupportFrame frame = FixedTies.of(site(TWO, 600, KICK, MAIN), 200);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 100, 640 100, 640 200, 0 200", "0 2082, 640 2082, 640 2182, 0 2182");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == -160 && ledger.depth() == 40);
    assertThat(timbers(frame, TimberUse.TIE))
        .extracting(Sections::side)
        .containsExactly(
            "-160 100, 0 100, 0 200, -160 200",
            "-160 100, 0 100, 0 200, -160 200",
            "-160 2082, 1336.5 2082, 1411.5 2182, -160 2182",
            "-160 2082, 1336.5 2082, 1411.5 2182, -160 2182");
    assertThat(meetings(frame, TimberUse.TIE).subList(2, 6))
        .containsExactly(
            "TIE on LEDGER at -160 150 along 100",
            "TIE on kick at 0 150 along 100",
            "TIE on LEDGER at -160 2132 along 100",
            "TIE on main at 1374 2132 along 100");
    assertThat(frame.unheld()).isEmpty();
    assertThat(frame.sways()).isFalse();
  }

  /** Studs at 0 and 600 hold the upper facet, those at 700 and 1200 the one below it. */
  @Test
  void aLevelWithStationsOfItsOwnHasALedgerThatReachesThem() {
    BackEdge aside = Sections.studded(KICK, 700.0, 1200.0);
    SupportFrame frame = FixedTies.of(site(TWO, 600, aside, MAIN), 200);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly(
            "700 100, 1240 100, 1240 200, 700 200", "0 2082, 640 2082, 640 2182, 0 2182");
  }

  /**
   * An edge that falls by 300 along the back at the second station is 240 lower there: both ties
   * lie at 2082 - 240. By 500, 400 lower, there is 50 more than 450 to be held at the first station
   * once more, on a ledger that reaches 200 to both of its sides.
   */
  @Test
  void anEdgeThatFallsIsHeldWhereItIsLowest() {
    BackEdge falls = Sections.slanting(MAIN, List.of(0.0, 300.0), 0.0, 600.0);
    assertThat(timbers(FixedTies.of(site(TWO, 600, falls), 200), TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 1842, 640 1842, 640 1942, 0 1942");
    BackEdge more = Sections.slanting(MAIN, List.of(0.0, 500.0), 0.0, 600.0);
    SupportFrame twice = FixedTies.of(site(TWO, 600, more), 200);
    assertThat(timbers(twice, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly(
            "0 1682, 640 1682, 640 1782, 0 1782", "-200 2082, 240 2082, 240 2182, -200 2182");
    assertThat(timbers(twice, TimberUse.TIE)).hasSize(3);
  }

  /**
   * 100 deep, in the middle of 100: the first reaches from 0 to 100, the second from 100 to 200 if
   * it is in the middle of another 100; of another 98, it would begin at 99. Alone, the first would
   * begin below the floor on 99.
   */
  @Test
  void aLevelNeedsRoomAboveTheOneBelow() {
    BackEdge first = back("kick", 0, 0, 0, 0, 100);
    BackEdge touching = back("main", 37, 0, 100, 75, 200);
    assertThat(timbers(FixedTies.of(site(TWO, 600, first, touching), 200), TimberUse.TIE))
        .hasSize(4);
    BackEdge low = back("main", 37, 0, 100, 73.5, 198);
    assertThat(timbers(FixedTies.of(site(TWO, 600, first, low), 200), TimberUse.TIE)).hasSize(2);
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
    SupportFrame frame = HingedFoot.of(site(TWO, 600, KICK, MAIN), 200, 1200, NOTHING);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 100, 640 100, 640 200, 0 200", "0 1150, 640 1150, 640 1250, 0 1250");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == -160 && ledger.depth() == 40);
    assertThat(timbers(frame, TimberUse.TIE)).hasSize(2);
  }

  /** A tie of 100 fits on 100 and not on 99, whose middle is at 49.5; on a roof none ends. */
  @Test
  void aHingedFootIsTiedWhereATieFits() {
    BackEdge just = back("kick", 0, 0, 0, 0, 100);
    assertThat(HingedFoot.of(site(TWO, 600, just, MAIN), 200, 1200, NOTHING).unheld()).isEmpty();
    BackEdge low = back("kick", 0, 0, 0, 0, 99);
    SupportFrame frame = HingedFoot.of(site(TWO, 600, low, MAIN), 200, 1200, NOTHING);
    assertThat(frame.unheld()).containsExactly(new Unheld("kick", Unheld.Cause.TOO_LOW, 99, 100));
    assertThat(timbers(frame, TimberUse.TIE)).isEmpty();
    BackEdge steep = back("kick", 61, 0, 0, 400, 222);
    assertThat(HingedFoot.of(site(TWO, 600, steep, MAIN), 200, 1200, NOTHING).unheld())
        .extracting(Unheld::facet)
        .containsExactly("kick");
  }
}
