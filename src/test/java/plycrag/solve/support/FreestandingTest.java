package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.solve.support.Stiffening.Along;

/**
 * Two stations of timber of 40 by 100; rails end at 1800. A heel reaches 420 up the lowest frame,
 * and the middle of a tie is 40 (a plate) + 120 + 50 = 210 below a frame's edge, along its back.
 */
class FreestandingTest {
  private static final List<Double> TWO = List.of(0.0, 600.0);
  private static final BackEdge KICK = back("kick", 0, 0, 0, 0, 800);
  private static final BackEdge MAIN = back("main", 37, 0, 800, 1125, 2300);

  private static SupportFrame braced(double behind, BackEdge... backs) {
    Stiffening none = new Stiffening(Along.NOTHING, false, 600);
    return Freestanding.of(site(TWO, 600, backs), behind, 1800, none);
  }

  private static SupportFrame kneed(double knee, double behind, BackEdge... backs) {
    Stiffening none = new Stiffening(Along.NOTHING, true, knee);
    return Freestanding.of(site(TWO, 600, backs), behind, 1800, none);
  }

  /** Whose tie has its top at a height: 40 + 120 below the edge. */
  private static BackEdge plumb(double level) {
    return back("main", 0, 0, 0, 0, level + 160);
  }

  /**
   * Posts stand from -400 to -300, on a rail of 100 and under the upper tie, whose middle is 210 ·
   * 4/5 = 168 below 2300, at 2132: 2082.
   */
  @Test
  void aPostStandsOnItsRailUnderTheUpperTie() {
    SupportFrame frame = braced(300, KICK, MAIN);
    assertThat(timbers(frame, TimberUse.RAIL))
        .hasSize(2)
        .allMatch(rail -> Sections.side(rail).equals("-400 0, 1800 0, 1800 100, -400 100"));
    assertThat(timbers(frame, TimberUse.POST))
        .hasSize(2)
        .allMatch(post -> Sections.side(post).equals("-400 100, -300 100, -300 2082, -400 2082"));
    assertThat(timbers(frame, TimberUse.POST)).allMatch(post -> post.depth() == 40);
    assertThat(meetings(frame, TimberUse.POST).subList(0, 2))
        .containsExactly(
            "POST on RAIL at -350 100 along 100", "POST on TIE at -350 2082 along 100");
  }

  /** 300 along the back are 240 down: 2082 - 240. */
  @Test
  void postsAreAsHighAsTheEdgeAtTheirStation() {
    BackEdge falls = Sections.slanting(MAIN, List.of(0.0, 300.0), 0.0, 600.0);
    assertThat(timbers(braced(300, KICK, falls), TimberUse.POST))
        .extracting(Sections::side)
        .containsExactly(
            "-400 100, -300 100, -300 2082, -400 2082", "-400 100, -300 100, -300 1842, -400 1842");
  }

  /**
   * The lower tie, its middle at 800 - 210 = 590, ends on the post at -300; the upper runs over it
   * to -400, and the other way to (2082 - 800) · 3/4 = 961.5 and 1036.5.
   */
  @Test
  void everyLevelHasATie() {
    SupportFrame frame = braced(300, KICK, MAIN);
    assertThat(timbers(frame, TimberUse.TIE).subList(0, 2))
        .extracting(Sections::side)
        .containsExactly(
            "-300 540, 0 540, 0 640, -300 640", "-400 2082, 961.5 2082, 1036.5 2182, -400 2182");
    assertThat(meetings(frame, TimberUse.TIE).subList(0, 3))
        .containsExactly(
            "TIE on POST at -300 590 along 100",
            "TIE on kick at 0 590 along 100",
            "TIE on main at 999 2132 along 100");
    assertThat(frame.sways()).isFalse();
  }

  /**
   * From the post at -600 on the rail up to the back at 0, under the tie: 1300 up, 600 out. Level
   * ends of w leave 600 - w to run, and w = 100 · √((600 - w)² + 1300²) / 1300. That is 106.9507:
   * √(493.0493² + 1300²) = 1390.359. Half of it is 53.475.
   */
  @Test
  void aBraceRunsFromThePostsFootToTheFrame() {
    SupportFrame frame = braced(600, plumb(1500));
    assertThat(Sections.side(timbers(frame, TimberUse.BRACE).get(0)))
        .isEqualTo("-600 100, -493.05 100, 0 1400, -106.95 1400");
    assertThat(meetings(frame, TimberUse.BRACE).subList(0, 2))
        .containsExactly(
            "BRACE on RAIL at -546.52 100 along 106.95",
            "BRACE on TIE at -53.48 1400 along 106.95");
  }

  /** Above a kick it stands on the tie there, not on the rail. */
  @Test
  void aSteepBraceStandsOnWhatIsBelowItsPanel() {
    SupportFrame frame = braced(300, KICK, MAIN);
    // 961.5 + 300 = 1261.5 out and 2082 - 640 = 1442 up is steeper than one in one
    assertThat(meetings(frame, TimberUse.BRACE).get(0))
        .startsWith("BRACE on TIE at ")
        .contains(" 640 ");
  }

  /** 800 out and 600 up, 1000 long: 100 · 1000/800 = 125 of the post, 1000/600 of it of the tie. */
  @Test
  void aFlatBraceEndsOnThePost() {
    SupportFrame frame = braced(800, plumb(800));
    assertThat(Sections.side(timbers(frame, TimberUse.BRACE).get(0)))
        .isEqualTo("-800 100, 0 700, -166.67 700, -800 225");
    assertThat(meetings(frame, TimberUse.BRACE).subList(0, 2))
        .containsExactly(
            "BRACE on POST at -800 162.5 along 125", "BRACE on TIE at -83.33 700 along 166.67");
  }

  /** Rail and tie take 100 each: 500 between them are a panel, 499 are none (a choice). */
  @Test
  void onlyAHighPanelIsBraced() {
    assertThat(timbers(braced(300, plumb(700)), TimberUse.BRACE)).hasSize(2);
    SupportFrame low = braced(300, plumb(699));
    assertThat(timbers(low, TimberUse.BRACE)).isEmpty();
    assertThat(low.unheld()).isEmpty();
  }

  /** A heel of 420, a tie of 100 and 20 between them: an edge at 540 + 160 = 700. */
  @Test
  void aTieNeedsRoomAboveTheHeel() {
    assertThat(timbers(braced(300, plumb(540)), TimberUse.TIE)).hasSize(2);
    assertTooLow(braced(300, plumb(539)), 699, 700);
    // this one's heel is lower, and would be 420 too if its frame were high enough
    assertTooLow(braced(300, back("main", 0, 0, 0, 0, 400)), 400, 700);
  }

  /**
   * On 300 a heel reaches 240 and leaves no tie room, whose middle would be at 150. On the next
   * facet a tie begins at 260 if its middle is at 310, that of a frame of 20.
   */
  @Test
  void aFrameTooLowForATieIsHeldByTheNext() {
    BackEdge low = back("kick", 0, 0, 0, 0, 300);
    SupportFrame held = braced(300, low, back("main", 0, 0, 300, 0, 320));
    assertThat(timbers(held, TimberUse.TIE)).hasSize(2);
    assertThat(held.unheld()).isEmpty();
    assertTooLow(braced(300, low, back("main", 0, 0, 300, 0, 318)), 318, 320);
  }

  private static void assertTooLow(SupportFrame frame, double found, double required) {
    assertThat(timbers(frame, TimberUse.TIE)).isEmpty();
    assertThat(frame.unheld())
        .containsExactly(new Unheld("main", Unheld.Cause.TOO_LOW, found, required));
  }

  /**
   * The upper tie is 168 - 50 = 118 below 1578, from 1360 to 1460, and its lower side 560 · 3/4 =
   * 420 out. The frame begins at 0, a quarter of the way from -140 to 420, where the brace is at
   * 640 + 720 / 4 = 820: 20 above the frame's lower end it passes; 1 mm less behind it does not.
   */
  @Test
  void aBracePassesBehindTheLowerEndOfTheFrame() {
    BackEdge leaning = back("main", 37, 0, 800, 583.5, 1578);
    SupportFrame passes = braced(140, KICK, leaning);
    assertThat(timbers(passes, TimberUse.BRACE)).hasSize(2);
    assertThat(passes.unheld()).isEmpty();
    SupportFrame none = braced(139, KICK, leaning);
    assertThat(timbers(none, TimberUse.BRACE)).isEmpty();
    assertThat(none.unheld()).containsExactly(new Unheld("main", Unheld.Cause.BRACE, 139, 140));
    // a post in line with the lower end: the brace begins below it
    assertThat(timbers(braced(0, leaning), TimberUse.BRACE)).hasSize(2);
  }

  /** What leans more than 60° ends no tie, so that the posts end under the highest that does. */
  @Test
  void aRoofIsNotHeld() {
    BackEdge roof = back("roof", 61, 1125, 2300, 2125, 2850);
    SupportFrame frame = braced(300, KICK, MAIN, roof);
    assertThat(frame.unheld()).extracting(Unheld::facet).containsExactly("roof");
    assertThat(Sections.side(timbers(frame, TimberUse.POST).get(0)))
        .endsWith("-300 2082, -400 2082");
    SupportFrame nothing = braced(300, roof, back("lid", 61, 2500, 2850, 3500, 3400));
    assertThat(nothing.unheld()).extracting(Unheld::facet).containsExactly("roof", "lid");
    assertThat(nothing.timbers()).isEmpty();
  }

  /** Under the tie at 1900, 600 down and along; its ends take 100 · √2 = 141.42. */
  @Test
  void aKneeBraceReachesAsFarAsAsked() {
    SupportFrame frame = kneed(600, 800, plumb(2000));
    assertThat(timbers(frame, TimberUse.KNEE)).hasSize(2);
    assertThat(Sections.side(timbers(frame, TimberUse.KNEE).get(0)))
        .isEqualTo("-800 1300, -200 1900, -341.42 1900, -800 1441.42");
    assertThat(meetings(frame, TimberUse.KNEE).subList(0, 2))
        .containsExactly(
            "KNEE on POST at -800 1370.71 along 141.42",
            "KNEE on TIE at -270.71 1900 along 141.42");
    assertThat(timbers(frame, TimberUse.BRACE)).isEmpty();
  }

  /** 800 to the frame, less 20; between rail and tie 600, less 20. */
  @Test
  void aKneeBraceIsCutToTheRoomThereIs() {
    assertThat(Sections.side(timbers(kneed(1000, 800, plumb(2000)), TimberUse.KNEE).get(0)))
        .startsWith("-800 1120, -20 1900,");
    assertThat(Sections.side(timbers(kneed(1000, 800, plumb(800)), TimberUse.KNEE).get(0)))
        .startsWith("-800 120, -220 700,");
  }

  /**
   * What is nearest to a line at 45° that comes down from the tie's underside at 2082: the frame's
   * lower end at 0, 800 has 0 - 800, the back at 961.5, 2082 has 961.5 - 2082, which is less. From
   * the post at -300 that leaves 961.5 + 300 - 20 = 1241.5.
   */
  @Test
  void theFrameLeavesAKneeBraceItsRoom() {
    assertThat(Sections.side(timbers(kneed(2000, 300, KICK, MAIN), TimberUse.KNEE).get(0)))
        .startsWith("-300 840.5, 941.5 2082,");
  }

  /**
   * Under a kick's tie at 700 only what is as low counts: 500 to the frame, less 20. The facet
   * above begins at 960, 260 nearer to a line at 45°.
   */
  @Test
  void whatIsAboveATieLeavesTheKneeUnderItAlone() {
    BackEdge kick = plumb(800);
    BackEdge main = back("main", 37, 0, 960, 1125, 2460);
    assertThat(Sections.side(timbers(kneed(1000, 500, kick, main), TimberUse.KNEE).get(0)))
        .startsWith("-500 220, -20 700,");
  }

  /** Both ends take 282.84: 303 behind leave 283, 302 leave 282, which is none. */
  @Test
  void aKneeBraceTooShortForItsEndsIsNone() {
    assertThat(timbers(kneed(600, 303, plumb(2000)), TimberUse.KNEE)).hasSize(2);
    SupportFrame none = kneed(600, 302, plumb(2000));
    assertThat(timbers(none, TimberUse.KNEE)).isEmpty();
    assertThat(none.unheld()).extracting(Unheld::facet).containsExactly("main");
  }
}
