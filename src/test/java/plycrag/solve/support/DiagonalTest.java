package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.support.Sections.place;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Timber that slants as the sides 5, 12, 13 or 3, 4, 5 of right triangles. */
class DiagonalTest {
  private static void assertPlaces(List<SectionPlace> found, double... expected) {
    assertThat(found).hasSize(expected.length / 2);
    for (int at = 0; at < found.size(); at++) {
      assertPlace(found.get(at), expected[2 * at], expected[2 * at + 1]);
    }
  }

  private static void assertPlace(SectionPlace found, double y, double z) {
    assertThat(found.y()).isCloseTo(y, within(1e-6));
    assertThat(found.z()).isCloseTo(z, within(1e-6));
  }

  private static void assertDirection(Diagonal diagonal, double u, double v) {
    assertThat(diagonal.direction().u()).isCloseTo(u, within(1e-6));
    assertThat(diagonal.direction().v()).isCloseTo(v, within(1e-6));
  }

  /**
   * 120 mm deep and 13/12 of that along its level ends: 130. The long sides go 500 out, 1200 up.
   */
  @Test
  void aSteepOneStandsOnWhatIsLevel() {
    Diagonal brace = Diagonal.between(place(10, 20), place(640, 1220), 120);
    assertPlaces(brace.corners(), 10, 20, 140, 20, 640, 1220, 510, 1220);
    assertDirection(brace, 5.0 / 13, 12.0 / 13);
    assertThat(brace.endsOnPost()).isFalse();
    assertPlace(brace.lowEnd(), 75, 20);
    assertPlace(brace.highEnd(), 575, 1220);
    assertThat(brace.lowLength()).isCloseTo(130, within(1e-6));
    assertThat(brace.highLength()).isCloseTo(130, within(1e-6));
  }

  /** 4 out for 3 up: 90 · 5/4 = 112.5 of the post, 90 · 5/3 = 150 of the tie. */
  @Test
  void aFlatOneEndsOnThePost() {
    Diagonal brace = Diagonal.between(place(10, 20), place(810, 620), 90);
    assertPlaces(brace.corners(), 10, 20, 810, 620, 660, 620, 10, 132.5);
    assertDirection(brace, 0.8, 0.6);
    assertThat(brace.endsOnPost()).isTrue();
    assertPlace(brace.lowEnd(), 10, 76.25);
    assertPlace(brace.highEnd(), 735, 620);
    assertThat(brace.lowLength()).isCloseTo(112.5, within(1e-9));
    assertThat(brace.highLength()).isCloseTo(150, within(1e-9));
  }

  /** At one in one it still ends on the post, a hair steeper it stands on what is level. */
  @Test
  void itStandsOnWhatIsLevelOnceItIsSteeperThanOneInOne() {
    assertThat(Diagonal.between(place(0, 0), place(400, 400), 100).endsOnPost()).isTrue();
    assertThat(Diagonal.between(place(0, 0), place(400, 400.1), 100).endsOnPost()).isFalse();
  }

  /** The steep one turned over: its ends are upright, its lower corner the same. */
  @Test
  void acrossPostsBothEndsAreUpright() {
    Diagonal brace = Diagonal.withUprightEnds(place(20, 10), place(1220, 640), 120);
    assertPlaces(brace.corners(), 20, 10, 1220, 510, 1220, 640, 20, 140);
    assertDirection(brace, 12.0 / 13, 5.0 / 13);
    assertThat(brace.endsOnPost()).isTrue();
    assertPlace(brace.lowEnd(), 20, 75);
    assertPlace(brace.highEnd(), 1220, 575);
    assertThat(brace.lowLength()).isCloseTo(130, within(1e-6));
    assertThat(brace.highLength()).isCloseTo(130, within(1e-6));
  }

  /** Each end takes 100 · √2 = 141.42 of it, both together 282.84. */
  @Test
  void aKneeBraceIsLongEnoughForBothItsEnds() {
    assertThat(Diagonal.shortestKnee(100)).isCloseTo(282.842712, within(1e-6));
  }

  /** Turned over about 600: 10 becomes 1190, 810 becomes 390; it runs up to the left. */
  @Test
  void theSameTurnedOverRunsTheOtherWay() {
    Diagonal brace = Diagonal.between(place(10, 20), place(810, 620), 90).mirroredAt(600);
    assertPlaces(brace.corners(), 1190, 20, 1190, 132.5, 540, 620, 390, 620);
    assertDirection(brace, -0.8, 0.6);
    assertThat(brace.endsOnPost()).isTrue();
    assertPlace(brace.lowEnd(), 1190, 76.25);
    assertPlace(brace.highEnd(), 465, 620);
    assertThat(brace.lowLength()).isCloseTo(112.5, within(1e-9));
    assertThat(brace.highLength()).isCloseTo(150, within(1e-9));
  }
}
