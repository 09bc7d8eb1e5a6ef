package plycrag.solve.support;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.support.Sections.back;

import org.junit.jupiter.api.Test;

/** A back of 1500 out and 2000 up, which is 2500 long. */
class BackEdgeTest {
  private static final BackEdge LEANING = back("main", 37, 100, 300, 1600, 2300);

  /** 0.75 mm out for each mm up: 800 up are 600 out, 200 down are 150 in. */
  @Test
  void runsOnStraightBeyondItsEnds() {
    assertThat(LEANING.y(1100)).isEqualTo(700);
    assertThat(LEANING.y(100)).isEqualTo(-50);
    assertThat(LEANING.z(700)).isEqualTo(1100);
    assertThat(LEANING.z(-50)).isEqualTo(100);
  }

  /** The front arris is depth · cos before the back: 100 · 2000 / 2500 = 80. */
  @Test
  void standsOnItsFrontIfItLeansOut() {
    assertThat(LEANING.stands(100)).isEqualTo(180);
  }

  @Test
  void standsOnItsBackIfItIsPlumbOrLeansBack() {
    assertThat(back("plumb", 0, 100, 0, 100, 2000).stands(100)).isEqualTo(100);
    assertThat(back("slab", -10, 100, 0, -253, 2000).stands(100)).isEqualTo(100);
  }

  /** 60° from plumb either way (a choice, no source). */
  @Test
  void takesSomethingLevelUpToSixtyDegrees() {
    assertThat(back("main", 60, 0, 0, 1, 1).takesLevel()).isTrue();
    assertThat(back("main", 60.01, 0, 0, 1, 1).takesLevel()).isFalse();
    assertThat(back("main", -60, 0, 0, 1, 1).takesLevel()).isTrue();
    assertThat(back("main", -60.01, 0, 0, 1, 1).takesLevel()).isFalse();
  }

  /** 20° out from plumb (a choice, no source). */
  @Test
  void takesSomethingUprightFromTwentyDegrees() {
    assertThat(back("main", 20, 0, 0, 1, 1).takesUpright()).isTrue();
    assertThat(back("main", 19.99, 0, 0, 1, 1).takesUpright()).isFalse();
    assertThat(back("main", -45, 0, 0, 1, 1).takesUpright()).isFalse();
  }
}
