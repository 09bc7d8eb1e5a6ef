package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Direction.Span;

/** Timber of 40 by 100 under a ceiling at 2500: ledgers lie between 2460 and 2500. */
class HangersTest {
  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final Span NONE = new Span(300, 300);
  private static final BackEdge MAIN = back("main", 37, 0, 300, 1500, 2300);

  /**
   * 3 out and 4 up for 5 along the back: 40 (a plate) + 120 below the edge are 96 back and 128
   * down, at 1404 and 2172; 100 further back it is 133.33 lower, at 2038.67.
   */
  @Test
  void aHangerStandsOnTheBackAndEndsUnderTheLedger() {
    SupportFrame frame = Hangers.of(site(TWO, 600, MAIN), 2500, NONE);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 2460, 640 2460, 640 2500, 0 2500");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == 1404 && ledger.depth() == 100);
    assertThat(timbers(frame, TimberUse.HANGER))
        .extracting(Sections::side)
        .containsExactly(
            "1304 2038.67, 1404 2172, 1404 2460, 1304 2460",
            "1304 2038.67, 1404 2172, 1404 2460, 1304 2460");
    assertThat(meetings(frame, TimberUse.HANGER).subList(0, 2))
        .containsExactly(
            "HANGER on LEDGER at 1354 2460 along 100", "HANGER on main at 1354 2105.33 along 100");
    assertThat(frame.unheld()).isEmpty();
  }

  /** Joists that carry it lie further out than what hangs on it. */
  @Test
  void aLedgerReachesTheJoistsBeyond() {
    SupportFrame frame = Hangers.of(site(TWO, 600, MAIN), 2500, new Span(-160, 700));
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("-160 2460, 700 2460, 700 2500, -160 2500");
  }

  /** 20 mm between 2172 and the ledger's underside 40 below the ceiling are enough. */
  @Test
  void aHangerIsTwentyMillimetresLongAtLeast() {
    assertThat(timbers(Hangers.of(site(TWO, 600, MAIN), 2232, NONE), TimberUse.HANGER)).hasSize(2);
    SupportFrame none = Hangers.of(site(TWO, 600, MAIN), 2231.9, NONE);
    assertThat(none.timbers()).isEmpty();
    assertThat(none.unheld()).extracting(Unheld::facet).containsExactly("main");
  }

  @Test
  void nothingHangsOnASteepBack() {
    BackEdge plumb = back("main", 19.9, 0, 300, 724, 2300);
    assertThat(Hangers.of(site(TWO, 600, plumb), 2500, NONE).unheld())
        .extracting(Unheld::facet)
        .containsExactly("main");
  }

  /** A fold below 1000 is braced from the floor, at 1000 it hangs (a choice, no source). */
  @Test
  void onlyLowFoldsAreBracedFromTheFloor() {
    SupportFrame low =
        Hangers.of(site(TWO, 600, back("kick", 27, 0, 0, 499.5, 999), MAIN), 2500, NONE);
    assertThat(timbers(low, TimberUse.BRACE)).hasSize(2);
    assertThat(timbers(low, TimberUse.HANGER)).hasSize(2);
    SupportFrame high =
        Hangers.of(site(TWO, 600, back("kick", 27, 0, 0, 500, 1000), MAIN), 2500, NONE);
    assertThat(timbers(high, TimberUse.BRACE)).isEmpty();
    assertThat(timbers(high, TimberUse.HANGER)).hasSize(4);
  }

  @Test
  void theUppermostEdgeHangsHoweverLowItIs() {
    SupportFrame frame = Hangers.of(site(TWO, 600, back("main", 27, 0, 0, 450, 900)), 2500, NONE);
    assertThat(timbers(frame, TimberUse.HANGER)).hasSize(2);
    assertThat(timbers(frame, TimberUse.BRACE)).isEmpty();
  }

  /**
   * Half a mm out for each mm up. 210 below the edge along the back are 210 · 2/√5 = 187.83 down,
   * 712.17, on the marks 712. On the floor a brace at 45° is 100 · √2 = 141.42 long; on the back it
   * takes twice that in height, 282.84: from 853.42 down to 570.58, where the back is at 100 +
   * 285.29.
   */
  @Test
  void aRakingBraceStandsAtFortyFiveDegrees() {
    SupportFrame frame =
        Hangers.of(site(TWO, 600, back("kick", 27, 100, 0, 550, 900), MAIN), 2500, NONE);
    assertThat(timbers(frame, TimberUse.BRACE))
        .extracting(Sections::side)
        .containsExactly(
            "-326.71 0, -185.29 0, 385.29 570.58, 526.71 853.42",
            "-326.71 0, -185.29 0, 385.29 570.58, 526.71 853.42");
    SupportTimber brace = timbers(frame, TimberUse.BRACE).get(0);
    assertThat(brace.direction().u()).isEqualTo(brace.direction().v());
    assertThat(meetings(frame, TimberUse.BRACE).get(0))
        .isEqualTo("BRACE on kick at 456 712 along 282.84");
  }

  /**
   * On a plumb back it takes 141.42 of height, half of it below the middle, which is on the marks:
   * at 71 of 142, and at 70 of 141.9. One in one it never meets it.
   */
  @Test
  void aFoldTooLowOrTooFlatForABraceIsNotHeld() {
    SupportFrame low =
        Hangers.of(site(TWO, 600, back("kick", 0, 0, 0, 0, 141.9), MAIN), 2500, NONE);
    assertThat(low.unheld()).containsExactly(new Unheld("kick", Unheld.Cause.TOO_LOW, 141.9, 142));
    assertThat(timbers(low, TimberUse.BRACE)).isEmpty();
    SupportFrame just = Hangers.of(site(TWO, 600, back("kick", 0, 0, 0, 0, 142), MAIN), 2500, NONE);
    assertThat(just.unheld()).isEmpty();
    BackEdge flat = back("kick", 50, 0, 0, 950, 800);
    SupportFrame beyond = Hangers.of(site(TWO, 600, flat, MAIN), 2500, NONE);
    assertThat(beyond.unheld()).extracting(Unheld::facet).containsExactly("kick");
    assertThat(timbers(beyond, TimberUse.BRACE)).isEmpty();
  }

  /** Beside the ends of plates nothing else has room; of three studs the one within is too few. */
  @Test
  void floorBracesStandWithinTheOuterStuds() {
    assertThat(braced(0.0, 200.0, 400.0, 600.0)).containsExactly(200.0, 400.0);
    assertThat(braced(0.0, 300.0, 600.0)).containsExactly(0.0, 600.0);
  }

  private static List<Double> braced(Double... studs) {
    BackEdge kick = Sections.studded(back("kick", 0, 0, 0, 0, 500), studs);
    return timbers(Hangers.of(site(List.of(studs), 600, kick, MAIN), 2500, NONE), TimberUse.BRACE)
        .stream()
        .map(brace -> brace.plane().floorAxes().x())
        .toList();
  }
}
