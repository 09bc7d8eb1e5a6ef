package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.fixing.Bodies.box;
import static plycrag.solve.fixing.Bodies.level;
import static plycrag.solve.fixing.Bodies.place;
import static plycrag.solve.fixing.Bodies.up;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Solid;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/**
 * By EN 1995-1-1 Table 8.2 (predrilled), 8.3.1.3 (0.85 between screws through a panel; edges of
 * plywood from memory) and 8.7.2 (six diameters deep): worked by hand, every screw free to be moved
 * by one mark of 1 mm.
 */
class GussetPlanTest {
  private static final double THICK = 18;

  private static Optional<GussetFit> over(double breadth, int each, List<Solid> obstacles) {
    return over(breadth, each, 600, obstacles);
  }

  private static Optional<GussetFit> over(
      double breadth, int each, double largest, List<Solid> obstacles) {
    TimberBody plate = box("P", place(0, 0, 0), place(1000, 90, breadth), level());
    TimberBody stud = box("S", place(500, 0, breadth), place(500 + breadth, 90, 900), up());
    GussetPlan plan =
        new GussetPlan(THICK, largest, each, GussetPlan.METRIC, 6, 5, 0, new Tape(LengthUnit.MM));
    return plan.over(
        List.of(new MemberPair(stud, plate)), new RoomAround(box -> obstacles, box -> obstacles));
  }

  /**
   * On a plate of 45 mm across its grain, screws of 5 mm want 7 d = 35 and 1 of both sides, and of
   * 4.5 mm 5 d = 22.5 and 1; of 4 mm 20 and 1, which leaves 3.
   */
  @Test
  void theNarrowerFaceTellsTheThickness() {
    assertThat(over(45, 4, List.of()).orElseThrow().diameter()).isEqualTo(4);
    assertThat(over(60, 4, List.of()).orElseThrow().diameter()).isEqualTo(4.5);
    assertThat(over(75, 4, List.of()).orElseThrow().diameter()).isEqualTo(5);
    assertThat(over(41, 4, List.of())).isEmpty();
  }

  /** 18 of plywood and 6 d = 24 are 42: of 4 mm the next longer is 45, and 67 would come out. */
  @Test
  void screwsGoInDeepEnough() {
    assertThat(over(45, 4, List.of()).orElseThrow().screwLength()).isEqualTo(45);
  }

  /**
   * Two and two in the stud: 12 d = 48 and 1 above its foot, the next 0.85 × 5 d = 17 and 2 higher.
   * Four in the middle of the plate, 0.85 × 4 d = 13.6 and 2 apart. Around them 7 d = 28 along the
   * force and 3 d = 12 across it.
   */
  @Test
  void theRectangleIsTheSmallestAroundItsScrews() {
    GussetFit fit = over(45, 4, List.of()).orElseThrow();
    assertThat(fit.screws()).hasSize(8);
    double low = fit.screws().stream().mapToDouble(one -> one.spot().across()).min().orElseThrow();
    double high = fit.screws().stream().mapToDouble(one -> one.spot().across()).max().orElseThrow();
    assertThat(low).isCloseTo(28, within(1.0));
    assertThat(high - low).isCloseTo(45 + 49 + 19 - 22.5, within(1.0));
    assertThat(fit.size().across()).isCloseTo(28 + 90.5 + 28, within(2.0));
    assertThat(fit.size().along()).isCloseTo(12 + 3 * 15.6 + 12, within(2.0));
  }

  /** Its lower side is its lower side, whichever of the two it runs along. */
  @Test
  void itIsSeenUpright() {
    GussetFit fit = over(45, 4, List.of()).orElseThrow();
    assertThat(fit.screws().stream().filter(screw -> screw.member().equals("S")))
        .allMatch(screw -> screw.spot().across() > 70);
    assertThat(fit.body().near().get(0).z()).isLessThan(fit.body().near().get(2).z());
  }

  /** A body before one side turns it to the other; one on each side leaves no room. */
  @Test
  void itKeepsOutOfWhatIsThere() {
    Solid before = box("B", place(0, -60, 0), place(1000, 0, 900), up()).solid();
    Solid behind = box("B", place(0, 90, 0), place(1000, 150, 900), up()).solid();
    GussetFit free = over(45, 4, List.of()).orElseThrow();
    boolean isBefore = free.body().overlap(before) > 0;
    GussetFit turned = over(45, 4, List.of(isBefore ? before : behind)).orElseThrow();
    assertThat(turned.body().overlap(isBefore ? before : behind)).isLessThan(0.1);
    assertThat(over(45, 4, List.of(before, behind))).isEmpty();
  }

  /** 100 mm before the face a driver of 120 does not come to the heads. */
  @Test
  void aDriverReachesItsScrews() {
    Solid near = box("B", place(0, -200, 0), place(1000, -100, 900), up()).solid();
    Solid far = box("B", place(0, 190, 0), place(1000, 300, 900), up()).solid();
    assertThat(over(45, 4, List.of(near, far))).isEmpty();
    Solid further = box("B", place(0, 230, 0), place(1000, 300, 900), up()).solid();
    assertThat(over(45, 4, List.of(near, further))).isPresent();
  }

  /** The smallest is 28 + 90.5 + 28 long. */
  @Test
  void noneIsLargerThanAllowed() {
    assertThat(over(45, 4, 150, List.of())).isPresent();
    assertThat(over(45, 4, 140, List.of())).isEmpty();
  }

  /** What stands 2 mm proud lies in no plane with the other. */
  @Test
  void whatIsNotFlushTakesNone() {
    TimberBody plate = box("P", place(0, 0, 0), place(1000, 90, 60), level());
    TimberBody stud = box("S", place(500, 2, 60), place(560, 88, 900), up());
    GussetPlan plan =
        new GussetPlan(THICK, 600, 4, GussetPlan.METRIC, 6, 5, 0, new Tape(LengthUnit.MM));
    assertThat(
            plan.over(
                List.of(new MemberPair(stud, plate)),
                new RoomAround(box -> List.of(), box -> List.of())))
        .isEmpty();
  }
}
