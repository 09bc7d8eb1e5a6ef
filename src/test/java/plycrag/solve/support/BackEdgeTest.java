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

  @Test
  void measuresItself() {
    assertThat(LEANING.run()).isEqualTo(1500);
    assertThat(LEANING.rise()).isEqualTo(2000);
    assertThat(LEANING.length()).isEqualTo(2500);
    assertThat(LEANING.lowered(70).lower()).isEqualTo(70);
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
