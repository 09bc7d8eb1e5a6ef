package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A hinged run that stands by itself, timber of 40 by 100 mm. */
class HingedOnPostsTest {
  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final BackEdge KICK = back("kick", 0, 0, 100, 0, 400);

  private static SupportFrame frame(BackEdge kick, double height) {
    return HingedOnPosts.of(site(TWO, 600, kick), 200, 500, height, true);
  }

  private static List<String> sides(SupportFrame frame, TimberUse use) {
    return timbers(frame, use).stream().map(Sections::side).distinct().toList();
  }

  /**
   * The kick's back is at 0, from 100 to 400; posts stand from -300 to -200. Held at 1200, they end
   * 60 and a beam of 100 higher. 0.6 of that behind them, at -1020, a brace stands on the rail. It
   * rises to 1200 and half of 100 · √(1 + 1/0.36) = 194.4, at a mark 1298: 1198 up for 720 along
   * and √(720² + 1198²) = 1397.7 long, so that it covers 194.13 of the post and 116.67 of the rail.
   * The tie's middle is in the middle of the kick.
   */
  @Test
  void postsAreBracedFromBehind() {
    SupportFrame frame = frame(KICK, 1200);
    assertThat(sides(frame, TimberUse.RAIL)).containsExactly("-1020 0, 500 0, 500 100, -1020 100");
    assertThat(sides(frame, TimberUse.POST))
        .containsExactly("-300 100, -200 100, -200 1360, -300 1360");
    assertThat(sides(frame, TimberUse.TIE)).containsExactly("-200 200, 0 200, 0 300, -200 300");
    assertThat(sides(frame, TimberUse.BRACE))
        .startsWith("-1020 100, -903.33 100, -300 1103.87, -300 1298");
    assertThat(meetings(frame, TimberUse.BRACE))
        .contains("BRACE on RAIL at -961.66 100 along 116.67")
        .contains("BRACE on POST at -300 1200.94 along 194.13");
    assertThat(meetings(frame, TimberUse.TIE))
        .contains("TIE on POST at -200 250 along 100", "TIE on kick at 0 250 along 100");
    assertThat(frame.unheld()).isEmpty();
    assertThat(frame.sways()).isFalse();
  }

  /**
   * Behind the posts lies a sill at their feet; before them another, 20 over the tie, the beam at
   * their tops, and a brace that ends 350 under that.
   */
  @Test
  void whatKeepsItFromSwayingLiesBeforeThePosts() {
    SupportFrame frame = frame(KICK, 1200);
    assertThat(timbers(frame, TimberUse.SILL))
        .extracting(sill -> sill.plane().out())
        .containsExactly(-300.0, -160.0);
    assertThat(sides(frame, TimberUse.SILL))
        .containsExactly(
            "-40 100, 680 100, 680 200, -40 200", "-40 320, 680 320, 680 420, -40 420");
    assertThat(sides(frame, TimberUse.BEAM))
        .containsExactly("-40 1260, 680 1260, 680 1360, -40 1360");
    assertThat(timbers(frame, TimberUse.BRACE))
        .filteredOn(brace -> brace.plane().out() == -160)
        .singleElement()
        .satisfies(
            brace -> assertThat(brace.outline().getEnvelopeInternal().getMaxY()).isEqualTo(910));
  }

  /** The tie needs 20 over the rail: its middle in that of a kick of 139, it has 19.5. */
  @Test
  void aKickThatIsTooLowIsTold() {
    assertThat(frame(back("kick", 0, 0, 100, 0, 240), 1200).unheld()).isEmpty();
    assertThat(frame(back("kick", 0, 0, 100, 0, 239), 1200).unheld())
        .containsExactly(new Unheld("kick", Unheld.Cause.TOO_LOW, 239, 240));
    assertThat(frame(back("kick", 61, 0, 100, 400, 322), 1200).unheld())
        .extracting(Unheld::cause)
        .containsExactly(Unheld.Cause.TOO_STEEP);
  }
}
