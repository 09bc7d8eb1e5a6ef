package plycrag.wall;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.wall.buying.Section;

class SectionTest {
  private static final Section STUD = new Section(45, 90);

  /** A wedge of 40 by 60 lies in it either way round; 50 by 60 is broader than its smaller side. */
  @Test
  void aSectionHoldsWhatIsSmallerOnBothSides() {
    assertThat(STUD.holds(new Section(40, 60))).isTrue();
    assertThat(STUD.holds(new Section(60, 40))).isTrue();
    assertThat(STUD.holds(new Section(50, 60))).isFalse();
    assertThat(STUD.holds(new Section(20, 91))).isFalse();
    assertThat(STUD.area()).isEqualTo(4050);
  }

  /** What the grid adds is no other timber; a tenth of a millimetre is. */
  @Test
  void turnedOverItIsTheSameTimber() {
    assertThat(STUD.isLike(new Section(90, 45))).isTrue();
    assertThat(STUD.isLike(new Section(45, 90.005))).isTrue();
    assertThat(STUD.isLike(new Section(45, 90.1))).isFalse();
    assertThat(STUD.isLike(new Section(45, 45))).isFalse();
  }
}
