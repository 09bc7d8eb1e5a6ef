package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.fixing.Bodies.box;
import static plycrag.solve.fixing.Bodies.level;
import static plycrag.solve.fixing.Bodies.place;
import static plycrag.solve.fixing.Bodies.up;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/** Screws of 5 mm, predrilled, by EN 1995-1-1 Table 8.2: worked by hand. */
class LapPlanTest {
  private static final Tape TAPE = new Tape(LengthUnit.MM);

  private static LapPlan plan(double diameter) {
    return new LapPlan(ThroughFastener.SCREW, diameter, 300, 0, TAPE);
  }

  /** Two uprights of 45 by 90 side by side over a length. */
  private static LapScrews uprights(double diameter, double depth, double length) {
    TimberBody first = box("A", place(0, 0, 0), place(45, depth, length), up());
    TimberBody second = box("B", place(45, 0, 0), place(90, depth, length), up());
    return plan(diameter).of(first, second, List.of()).orElseThrow();
  }

  /** 12 d = 60 from both ends, 390 between: two gaps; in the middle of 90. */
  @Test
  void uprightsSideBySideTakeOneLine() {
    LapScrews screws = uprights(5, 90, 510);
    assertThat(screws.holds()).isTrue();
    assertThat(screws.spots())
        .isEqualTo(List.of(new FacePlace(60, 45), new FacePlace(255, 45), new FacePlace(450, 45)));
  }

  /** 2 × 60 + 5 × 5 = 145 is enough for two, 140 is not; 140 / 29 d = 4.83 mm. */
  @Test
  void theOverlapMustHoldTwo() {
    assertThat(uprights(5, 90, 145).spots())
        .isEqualTo(List.of(new FacePlace(60, 45), new FacePlace(85, 45)));
    LapScrews tooShort = uprights(5, 90, 140);
    assertThat(tooShort.holds()).isFalse();
    assertThat(tooShort.asked().overlap()).isCloseTo(145, within(1e-9));
    assertThat(tooShort.spots()).hasSize(2);
    assertThat(tooShort.thickest()).isCloseTo(4.8, within(1e-9));
    assertThat(uprights(4.8, 90, 140).holds()).isTrue();
  }

  /** 2 × 3 d = 30 is broad enough, 29 is not; 4.8 mm ask for 28.8. */
  @Test
  void theFaceMustBeBroadEnough() {
    assertThat(uprights(5, 30, 510).holds()).isTrue();
    LapScrews narrow = uprights(5, 29, 510);
    assertThat(narrow.holds()).isFalse();
    assertThat(narrow.asked().breadth()).isCloseTo(30, within(1e-9));
    assertThat(narrow.thickest()).isCloseTo(4.8, within(1e-9));
  }

  @Test
  void saysWhereNoScrewWouldDo() {
    assertThat(uprights(5, 10, 510).thickest()).isZero();
  }

  /** A level beam of 90 over a post that is broad: 15 and 60 in the beam, 35 and 35 in the post. */
  @Test
  void acrossAPostBothSidesOfItAreLoaded() {
    TimberBody beam = box("A", place(0, 0, 1000), place(1000, 45, 1090), level());
    TimberBody post = box("B", place(400, 45, 0), place(545, 90, 2000), up());
    LapScrews screws = plan(5).of(beam, post, List.of()).orElseThrow();
    assertThat(screws.holds()).isTrue();
    assertThat(screws.asked().first().side()).isCloseTo(15, within(1e-9));
    assertThat(screws.asked().first().end()).isCloseTo(60, within(1e-9));
    assertThat(screws.asked().second().side()).isCloseTo(35, within(1e-9));
    assertThat(screws.asked().second().end()).isCloseTo(35, within(1e-9));
    assertThat(screws.spots()).hasSize(2);
    for (FacePlace spot : screws.spots()) {
      assertThat(spot.along()).isBetween(435.0, 510.0);
      assertThat(spot.across()).isBetween(15.0, 75.0);
    }
    FacePlace way = screws.spots().get(1).minus(screws.spots().get(0));
    assertThat(way.length()).isCloseTo(Math.sqrt(75 * 75 + 60 * 60), within(1e-9));
  }

  /** 2 × 35 = 70 is more than 45; below 5 mm a loaded side asks for 5 d: 4.5 mm is the thickest. */
  @Test
  void aNarrowPostTakesThinnerScrews() {
    TimberBody beam = box("A", place(0, 0, 1000), place(1000, 45, 1090), level());
    TimberBody post = box("B", place(400, 45, 0), place(445, 90, 2000), up());
    LapScrews screws = plan(5).of(beam, post, List.of()).orElseThrow();
    assertThat(screws.holds()).isFalse();
    assertThat(screws.thickest()).isCloseTo(4.5, within(1e-9));
    assertThat(screws.spots()).allMatch(spot -> spot.along() > 400 && spot.along() < 445);
  }

  /**
   * Bolts of 10 mm (EN 1995-1-1 Table 8.4): max(7 d, 80) = 80 to the ends, 4 d = 40 to the sides.
   * 12 mm ask for 96 of 90; 11.2 mm for 89.6.
   */
  @Test
  void boltsKeepTheirOwnDistances() {
    TimberBody first = box("A", place(0, 0, 0), place(45, 90, 1200), up());
    TimberBody second = box("B", place(45, 0, 0), place(90, 90, 1200), up());
    LapPlan plan = new LapPlan(ThroughFastener.BOLT, 10, 600, 0, TAPE);
    LapScrews bolts = plan.of(first, second, List.of()).orElseThrow();
    assertThat(bolts.holds()).isTrue();
    assertThat(bolts.spots())
        .isEqualTo(List.of(new FacePlace(80, 45), new FacePlace(600, 45), new FacePlace(1120, 45)));
    LapPlan thick = new LapPlan(ThroughFastener.BOLT, 12, 600, 0, TAPE);
    assertThat(thick.of(first, second, List.of()).orElseThrow().holds()).isFalse();
    assertThat(thick.of(first, second, List.of()).orElseThrow().thickest())
        .isCloseTo(11.2, within(1e-9));
  }

  /**
   * A stud of 45 stands on the outer side of the first from 577 to 622: a washer of 30 needs its
   * middle 15 off: of 562 and 637 the bolt at 600 moves to the nearer.
   */
  @Test
  void washersKeepOffTimber() {
    TimberBody first = box("A", place(0, 0, 0), place(45, 90, 1200), up());
    TimberBody second = box("B", place(45, 0, 0), place(90, 90, 1200), up());
    TimberBody stud = box("S", place(-500, 0, 577), place(0, 90, 622), level());
    LapPlan plan = new LapPlan(ThroughFastener.BOLT, 10, 600, 0, TAPE);
    assertThat(plan.of(first, second, List.of(stud)).orElseThrow().spots())
        .isEqualTo(List.of(new FacePlace(80, 45), new FacePlace(637, 45), new FacePlace(1120, 45)));
    TimberBody beyond = box("S", place(90, 0, 577), place(500, 90, 622), level());
    assertThat(plan.of(first, second, List.of(beyond)).orElseThrow().spots().get(1).along())
        .isEqualTo(637);
    LapPlan screws = plan(5);
    assertThat(screws.of(first, second, List.of(beyond)).orElseThrow().spots())
        .extracting(FacePlace::along)
        .containsExactly(60.0, 330.0, 600.0, 870.0, 1140.0);
  }

  @Test
  void nothingIsSetWhereNothingLiesAlong() {
    TimberBody first = box("A", place(0, 0, 0), place(45, 90, 500), up());
    TimberBody above = box("B", place(45, 0, 600), place(90, 90, 900), up());
    assertThat(plan(5).of(first, above, List.of())).isEmpty();
  }
}
