package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.support.Sections.back;
import static plycrag.solve.support.Sections.meetings;
import static plycrag.solve.support.Sections.site;
import static plycrag.solve.support.Sections.timbers;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.solve.support.Stiffening.Along;

/**
 * Posts of 40 by 100 seen from behind, 300 behind a plumb wall: their faces at -300, their backs
 * 100 further. The top of a tie is 40 (a plate) + 120 below the wall's edge.
 */
class PostRowTest {
  private static SupportFrame frame(SupportSite site, Along along, double knee) {
    return Freestanding.of(site, 300, 500, new Stiffening(along, false, knee));
  }

  /** Whose upper tie has its top at a height. */
  private static SupportSite posts(double level, Double... studs) {
    return site(List.of(studs), 1200, plumb(level));
  }

  private static BackEdge plumb(double level) {
    return back("main", 0, 0, 0, 0, level + 160);
  }

  /** The braces along the wall, not those of stations. */
  private static List<SupportTimber> braces(SupportFrame frame) {
    return timbers(frame, TimberUse.BRACE).stream()
        .filter(timber -> timber.plane().out() != 0)
        .toList();
  }

  /**
   * Posts of 120 stand from 120 to 1110 - 120 = 990, a sill and a beam of 120 leave 240 to 870, the
   * row is from 0 to 1080 + 40 = 1120 and a brace runs past it by 40 at both ends: 630 up and 1200
   * along. Upright ends of 130 leave 500, which is 5, 12, 13 again: 120 · 13/12 = 130. Its middle
   * is 60 · 5/12 = 25 above that of its lower end where it crosses the first post's.
   */
  @Test
  void aBraceRunsFromThePostsFootToTheNextOnesHead() {
    SupportSite site =
        site(Sections.timber(40, 120), List.of(0.0, 1080.0), 1200, 10_000, plumb(1110));
    SupportFrame frame = frame(site, Along.BRACES, 600);
    SupportTimber brace =
        timbers(frame, TimberUse.BRACE).get(timbers(frame, TimberUse.BRACE).size() - 1);
    assertThat(Sections.side(brace)).isEqualTo("-40 240, 1160 740, 1160 870, -40 370");
    // the posts' backs: -300 - 120
    assertThat(brace.plane().out()).isEqualTo(-420);
    assertThat(brace.depth()).isEqualTo(40);
    List<String> meetings = meetings(frame, TimberUse.BRACE);
    assertThat(meetings.subList(meetings.size() - 2, meetings.size()))
        .containsExactly(
            "BRACE beside POST at 20 330 along 120", "BRACE beside POST at 1100 780 along 120");
    assertThat(frame.sways()).isFalse();
  }

  @Test
  void theFirstBayAndTheLastAreBraced() {
    assertThat(braces(frame(posts(2000, 0.0, 1000.0), Along.BRACES, 600))).hasSize(1);
    assertThat(braces(frame(posts(2000, 0.0, 1000.0, 2000.0), Along.BRACES, 600))).hasSize(2);
    List<SupportTimber> four =
        braces(frame(posts(2000, 0.0, 1000.0, 2000.0, 3000.0), Along.BRACES, 600));
    assertThat(four)
        .extracting(timber -> timber.outline().getEnvelopeInternal().getMinX())
        .containsExactly(-40.0, 1960.0);
    // they lean against each other, on posts of their own as high as each other
    assertThat(four).extracting(timber -> timber.direction().u() > 0).containsExactly(true, false);
    assertThat(four)
        .extracting(timber -> timber.outline().getEnvelopeInternal().getMaxY())
        .containsExactly(1800.0, 1800.0);
    assertThat(braces(frame(posts(2000, 0.0, 1000.0), Along.NOTHING, 600))).isEmpty();
  }

  /**
   * The first as above: 5 up for 12 along, an end of 130. Over the post, from 1040 to 1160, both
   * run: the second leans to its left end, 130 + 2 · 120 · 5/12 + 20 = 250 below 870; the first's
   * underside is there at 740 - 120 · 5/12 = 690.
   */
  @Test
  void twoBracesOnOnePostLeaveRoomBetweenThem() {
    SupportSite site =
        site(Sections.timber(40, 120), List.of(0.0, 1080.0, 2160.0), 1200, 10_000, plumb(1110));
    List<SupportTimber> two = braces(frame(site, Along.BRACES, 600));
    assertThat(two).hasSize(2);
    Envelope second = two.get(1).outline().getEnvelopeInternal();
    assertThat(second.getMinX()).isEqualTo(1040);
    assertThat(second.getMaxX()).isEqualTo(2240);
    assertThat(second.getMinY()).isEqualTo(240);
    assertThat(second.getMaxY()).isCloseTo(870 - 250, within(1e-3));
    assertThat(two.get(0).outline().distance(two.get(1).outline())).isGreaterThan(20);
  }

  /**
   * Posts from 100 to 583 leave 283 between a sill that ends at 200 and a beam that begins at 483.
   * Both ends of a brace take 100 · √2 at one in one, 282.84 together; 1 less is no room for it.
   */
  @Test
  void aBraceThatHardlySlantsLeavesItSwaying() {
    SupportFrame just = frame(posts(683, 0.0, 1000.0), Along.BRACES, 600);
    assertThat(braces(just)).hasSize(1);
    assertThat(just.sways()).isFalse();
    SupportFrame none = frame(posts(682, 0.0, 1000.0), Along.BRACES, 600);
    assertThat(braces(none)).isEmpty();
    assertThat(none.sways()).isTrue();
  }

  /** Posts of 100 to 1900, 1000 apart: a sill from 100 and a beam up to 1900, 40 past both. */
  @Test
  void aSillAndABeamRunPastThePosts() {
    SupportFrame frame = frame(posts(2000, 0.0, 1000.0), Along.BRACES, 600);
    assertThat(timbers(frame, TimberUse.SILL))
        .extracting(Sections::side)
        .containsExactly("-40 100, 1080 100, 1080 200, -40 200");
    assertThat(timbers(frame, TimberUse.BEAM))
        .extracting(Sections::side)
        .containsExactly("-40 1800, 1080 1800, 1080 1900, -40 1900");
    assertThat(meetings(frame, TimberUse.SILL))
        .containsExactly(
            "SILL beside POST at 20 150 along 100", "SILL beside POST at 1020 150 along 100");
  }

  @Test
  void onePostAloneSways() {
    assertThat(frame(posts(600, 0.0), Along.BRACES, 600).sways()).isTrue();
    assertThat(frame(posts(600, 0.0), Along.KNEES, 600).sways()).isTrue();
    assertThat(frame(posts(600, 0.0), Along.NOTHING, 600).sways()).isFalse();
    assertThat(frame(posts(2000, 0.0, 1000.0), Along.BRACES, 600).sways()).isFalse();
  }

  /** Posts end at 2000 - 100 = 1900; the beam lies on their backs from 1800, 40 past. */
  @Test
  void aBeamLiesAlongTheUpperEnds() {
    SupportFrame frame = frame(posts(2000, 0.0, 1160.0), Along.KNEES, 400);
    assertThat(timbers(frame, TimberUse.BEAM))
        .extracting(Sections::side)
        .containsExactly("-40 1800, 1240 1800, 1240 1900, -40 1900");
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
    SupportSite site =
        site(Sections.timber(40, 100), List.of(0.0, 1000.0, 2000.0), 1200, 1100, plumb(2000));
    SupportFrame frame = frame(site, Along.KNEES, 400);
    assertThat(timbers(frame, TimberUse.BEAM))
        .extracting(Sections::side)
        .containsExactly(
            "-40 1800, 1020 1800, 1020 1900, -40 1900",
            "1020 1800, 2080 1800, 2080 1900, 1020 1900");
    assertThat(meetings(frame, TimberUse.BEAM))
        .containsExactly(
            "BEAM beside POST at 20 1850 along 100",
            "BEAM beside POST at 1010 1850 along 100",
            "BEAM beside POST at 1030 1850 along 100",
            "BEAM beside POST at 2020 1850 along 100");
    // every knee lies along the one beam that its end is under
    assertThat(meetings(frame, TimberUse.KNEE)).hasSize(8);
  }

  /**
   * Timber of 20: halves of a post bear 10 each, which is no more than half of the least room. Its
   * plate is 20 less too, so that what lies under a tie is 20 higher than at 40.
   */
  @Test
  void aBeamHoldsNoPostThatItHardlyTouches() {
    SupportSite site =
        site(Sections.timber(20, 100), List.of(0.0, 1000.0, 2000.0), 1200, 1100, plumb(2000));
    assertThat(meetings(frame(site, Along.KNEES, 400), TimberUse.BEAM))
        .containsExactly(
            "BEAM beside POST at 10 1870 along 100", "BEAM beside POST at 2010 1870 along 100");
  }
}
