package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Timber of 40 by 100 under a ceiling at 2500: ledgers lie between 2460 and 2500. */
class HangersTest {
  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final BackEdge MAIN = back("main", 37, 0, 300, 1500, 2300);

  /** 2000 up for 1500 out: 100 back from the upper end the back is 133.33 lower, at 2166.67. */
  @Test
  void aHangerStandsOnTheBackAndEndsUnderTheLedger() {
    SupportFrame frame = Hangers.of(site(TWO, 600, MAIN), 2500);
    assertThat(timbers(frame, TimberUse.LEDGER))
        .extracting(Sections::side)
        .containsExactly("0 2460, 640 2460, 640 2500, 0 2500");
    assertThat(timbers(frame, TimberUse.LEDGER))
        .allMatch(ledger -> ledger.plane().out() == 1500 && ledger.depth() == 100);
    assertThat(timbers(frame, TimberUse.HANGER))
        .extracting(Sections::side)
        .containsExactly(
            "1400 2166.67, 1500 2300, 1500 2460, 1400 2460",
            "1400 2166.67, 1500 2300, 1500 2460, 1400 2460");
    assertThat(meetings(frame, TimberUse.HANGER).subList(0, 2))
        .containsExactly(
            "HANGER on LEDGER at 1450 2460 along 100", "HANGER on main at 1450 2233.33 along 100");
    assertThat(frame.unheld()).isEmpty();
  }

  /** 20 mm between the upper end and the ledger's underside are enough, less is none. */
  @Test
  void aHangerIsTwentyMillimetresLongAtLeast() {
    assertThat(timbers(Hangers.of(site(TWO, 600, MAIN), 2360), TimberUse.HANGER)).hasSize(2);
    SupportFrame none = Hangers.of(site(TWO, 600, MAIN), 2359.9);
    assertThat(none.timbers()).isEmpty();
    assertThat(none.unheld()).extracting(Unheld::facet).containsExactly("main");
  }

  @Test
  void nothingHangsOnASteepBack() {
    BackEdge plumb = back("main", 19.9, 0, 300, 724, 2300);
    assertThat(Hangers.of(site(TWO, 600, plumb), 2500).unheld())
        .extracting(Unheld::facet)
        .containsExactly("main");
  }

  /** A fold below 1000 is braced from the floor, at 1000 it hangs (a choice, no source). */
  @Test
  void onlyLowFoldsAreBracedFromTheFloor() {
    SupportFrame low = Hangers.of(site(TWO, 600, back("kick", 27, 0, 0, 499.5, 999), MAIN), 2500);
    assertThat(timbers(low, TimberUse.BRACE)).hasSize(2);
    assertThat(timbers(low, TimberUse.HANGER)).hasSize(2);
    SupportFrame high = Hangers.of(site(TWO, 600, back("kick", 27, 0, 0, 500, 1000), MAIN), 2500);
    assertThat(timbers(high, TimberUse.BRACE)).isEmpty();
    assertThat(timbers(high, TimberUse.HANGER)).hasSize(4);
  }

  @Test
  void theUppermostEdgeHangsHoweverLowItIs() {
    SupportFrame frame = Hangers.of(site(TWO, 600, back("main", 27, 0, 0, 450, 900)), 2500);
    assertThat(timbers(frame, TimberUse.HANGER)).hasSize(2);
    assertThat(timbers(frame, TimberUse.BRACE)).isEmpty();
  }

  /**
   * Half a mm out for each mm up. On the floor a brace at 45° is 100 · √2 = 141.42 long; on the
   * back it takes twice that in height, 282.84: from 900 down to 617.16, where the back is at 100 +
   * 308.58.
   */
  @Test
  void aRakingBraceStandsAtFortyFiveDegrees() {
    SupportFrame frame = Hangers.of(site(TWO, 600, back("kick", 27, 100, 0, 550, 900), MAIN), 2500);
    assertThat(timbers(frame, TimberUse.BRACE))
        .extracting(Sections::side)
        .containsExactly(
            "-350 0, -208.58 0, 408.58 617.16, 550 900",
            "-350 0, -208.58 0, 408.58 617.16, 550 900");
    SupportTimber brace = timbers(frame, TimberUse.BRACE).get(0);
    assertThat(brace.direction().u()).isEqualTo(brace.direction().v());
    assertThat(meetings(frame, TimberUse.BRACE).get(0))
        .isEqualTo("BRACE on kick at 479.29 758.58 along 282.84");
  }

  /** On a plumb back it takes 141.42 of height; one in one it never meets it. */
  @Test
  void aFoldTooLowOrTooFlatForABraceIsNotHeld() {
    SupportFrame low = Hangers.of(site(TWO, 600, back("kick", 0, 0, 0, 0, 141.4), MAIN), 2500);
    assertThat(low.unheld()).extracting(Unheld::facet).containsExactly("kick");
    assertThat(timbers(low, TimberUse.BRACE)).isEmpty();
    SupportFrame just = Hangers.of(site(TWO, 600, back("kick", 0, 0, 0, 0, 141.5), MAIN), 2500);
    assertThat(just.unheld()).isEmpty();
    BackEdge flat = back("kick", 50, 0, 0, 950, 800);
    SupportFrame beyond = Hangers.of(site(TWO, 600, flat, MAIN), 2500);
    assertThat(beyond.unheld()).extracting(Unheld::facet).containsExactly("kick");
    assertThat(timbers(beyond, TimberUse.BRACE)).isEmpty();
  }
}
