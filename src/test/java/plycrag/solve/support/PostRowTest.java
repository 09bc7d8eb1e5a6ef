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
 * Posts of 40 by 100 seen from behind, 300 behind a plumb wall: their faces at -300, their backs
 * 100 further.
 */
class PostRowTest {
  private static SupportFrame frame(SupportSite site, Along along, double knee) {
    return Freestanding.of(site, 300, 500, new Stiffening(along, false, knee));
  }

  private static SupportSite posts(double height, Double... studs) {
    return site(List.of(studs), 1200, back("main", 0, 0, 0, 0, height));
  }

  /**
   * Posts of 120 stand from 120 to 870 - 120 = 750, the row from 0 to 1160 + 40 = 1200: 630 up and
   * 1200 along. Upright ends of 130 leave 500, which is 5, 12, 13 again: 120 · 13/12 = 130.
   */
  @Test
  void aBraceRunsFromThePostsFootToTheNextOnesHead() {
    BackEdge plumb = back("main", 0, 0, 0, 0, 870);
    SupportSite site =
        site(Sections.timber(40, 120), List.of(0.0, 1160.0), 1200, 10_000, plumb);
    SupportFrame frame = frame(site, Along.BRACES, 600);
    SupportTimber brace =
        timbers(frame, TimberUse.BRACE).get(timbers(frame, TimberUse.BRACE).size() - 1);
    assertThat(Sections.side(brace)).isEqualTo("0 120, 1200 620, 1200 750, 0 250");
    // the posts' backs: -300 - 120
    assertThat(brace.plane().out()).isEqualTo(-420);
    assertThat(brace.depth()).isEqualTo(40);
    List<String> meetings = meetings(frame, TimberUse.BRACE);
    assertThat(meetings.subList(meetings.size() - 2, meetings.size()))
        .containsExactly(
            "BRACE beside POST at 0 185 along 120", "BRACE beside POST at 1200 685 along 120");
    assertThat(frame.sways()).isFalse();
  }

  /** Panels of 400 have no brace across: what there is lies along the wall. */
  @Test
  void theFirstBayAndTheLastAreBraced() {
    assertThat(timbers(frame(posts(600, 0.0, 1000.0), Along.BRACES, 600), TimberUse.BRACE))
        .hasSize(1);
    assertThat(timbers(frame(posts(600, 0.0, 1000.0, 2000.0), Along.BRACES, 600), TimberUse.BRACE))
        .hasSize(2);
    List<SupportTimber> four =
        timbers(frame(posts(600, 0.0, 1000.0, 2000.0, 3000.0), Along.BRACES, 600), TimberUse.BRACE);
    assertThat(four)
        .extracting(timber -> timber.outline().getEnvelopeInternal().getMinX())
        .containsExactly(0.0, 2000.0);
    assertThat(timbers(frame(posts(600, 0.0, 1000.0), Along.NOTHING, 600), TimberUse.BRACE))
        .isEmpty();
  }

  @Test
  void onePostAloneSways() {
    assertThat(frame(posts(600, 0.0), Along.BRACES, 600).sways()).isTrue();
    assertThat(frame(posts(600, 0.0), Along.KNEES, 600).sways()).isTrue();
    assertThat(frame(posts(600, 0.0), Along.NOTHING, 600).sways()).isFalse();
    assertThat(frame(posts(600, 0.0, 1000.0), Along.BRACES, 600).sways()).isFalse();
  }

  /** Posts end at 2000 - 100 = 1900; the beam lies on their backs from 1800 to there. */
  @Test
  void aBeamLiesAlongTheUpperEnds() {
    SupportFrame frame = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 400);
    assertThat(timbers(frame, TimberUse.BEAM))
        .extracting(Sections::side)
        .containsExactly("0 1800, 1200 1800, 1200 1900, 0 1900");
    assertThat(timbers(frame, TimberUse.BEAM)).allMatch(beam -> beam.plane().out() == -400);
    assertThat(timbers(frame, TimberUse.BEAM)).allMatch(beam -> beam.depth() == 40);
    assertThat(meetings(frame, TimberUse.BEAM))
        .containsExactly(
            "BEAM beside POST at 20 1850 along 100", "BEAM beside POST at 1180 1850 along 100");
  }

  /**
   * From the post's side at 40, 400 along and up to 1900; ends of 141.42. On the beam it is held
   * half of 100 down and half of 100 back from the middle of its end, 440 - 70.71. The other is the
   * same about 600.
   */
  @Test
  void kneeBracesStandBetweenThePosts() {
    SupportFrame frame = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 400);
    assertThat(timbers(frame, TimberUse.KNEE))
        .extracting(Sections::side)
        .containsExactly(
            "40 1500, 440 1900, 298.58 1900, 40 1641.42",
            "1160 1500, 1160 1641.42, 901.42 1900, 760 1900");
    // before the beam by its breadth: -400 + 40
    assertThat(timbers(frame, TimberUse.KNEE)).allMatch(knee -> knee.plane().out() == -360);
    assertThat(timbers(frame, TimberUse.KNEE)).allMatch(knee -> knee.depth() == 40);
    assertThat(meetings(frame, TimberUse.KNEE))
        .containsExactly(
            "KNEE on POST at 40 1570.71 along 141.42",
            "KNEE beside BEAM at 319.29 1850 along 100",
            "KNEE on POST at 1160 1570.71 along 141.42",
            "KNEE beside BEAM at 880.71 1850 along 100");
    assertThat(frame.sways()).isFalse();
  }

  /** 1120 between the posts: half of it less 20 is 550. Posts of 500 leave 480. */
  @Test
  void kneeBracesAreCutToTheRoomThereIs() {
    SupportFrame wide = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 1000);
    assertThat(Sections.side(timbers(wide, TimberUse.KNEE).get(0)))
        .startsWith("40 1350, 590 1900,");
    // from 100 to 700 - 100 = 600, less 20
    SupportFrame low = frame(posts(700, 0.0, 1160.0), Along.KNEES, 1000);
    assertThat(Sections.side(timbers(low, TimberUse.KNEE).get(0))).startsWith("40 120, 520 600,");
  }

  /** Both ends take 282.84 of it. */
  @Test
  void aKneeBraceTooShortForItsEndsLeavesItSwaying() {
    SupportFrame just = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 283);
    assertThat(timbers(just, TimberUse.KNEE)).hasSize(2);
    assertThat(just.sways()).isFalse();
    SupportFrame none = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 282);
    assertThat(timbers(none, TimberUse.KNEE)).isEmpty();
    assertThat(none.sways()).isTrue();
  }

  /**
   * Lengths of 1100 at most: the first ends over the middle of the post at 1000, so that both
   * halves of it bear 20.
   */
  @Test
  void twoLengthsOfABeamBearOnOnePost() {
    BackEdge plumb = back("main", 0, 0, 0, 0, 2000);
    SupportSite site =
        site(Sections.timber(40, 100), List.of(0.0, 1000.0, 2000.0), 1200, 1100, plumb);
    SupportFrame frame = frame(site, Along.KNEES, 400);
    assertThat(timbers(frame, TimberUse.BEAM))
        .extracting(Sections::side)
        .containsExactly(
            "0 1800, 1020 1800, 1020 1900, 0 1900", "1020 1800, 2040 1800, 2040 1900, 1020 1900");
    assertThat(meetings(frame, TimberUse.BEAM))
        .containsExactly(
            "BEAM beside POST at 20 1850 along 100",
            "BEAM beside POST at 1010 1850 along 100",
            "BEAM beside POST at 1030 1850 along 100",
            "BEAM beside POST at 2020 1850 along 100");
    // every knee lies along the one beam that its end is under
    assertThat(meetings(frame, TimberUse.KNEE)).hasSize(8);
  }

  /** Timber of 20: halves of a post bear 10 each, which is no more than half of the least room. */
  @Test
  void aBeamHoldsNoPostThatItHardlyTouches() {
    BackEdge plumb = back("main", 0, 0, 0, 0, 2000);
    SupportSite site =
        site(Sections.timber(20, 100), List.of(0.0, 1000.0, 2000.0), 1200, 1100, plumb);
    assertThat(meetings(frame(site, Along.KNEES, 400), TimberUse.BEAM))
        .containsExactly(
            "BEAM beside POST at 10 1850 along 100", "BEAM beside POST at 2010 1850 along 100");
  }
}
