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
   * Screws pull the plate up: 7 d of 5 mm, 5 d of less and 1 to its upper side, 3 d and 1 to its
   * lower. Of 5 mm that is 36 + 16 = 52, of 4.5 mm 23.5 + 14.5 = 38, of 4 mm 21 + 13 = 34. No
   * thinner ones are sold.
   */
  @Test
  void theNarrowerFaceTellsTheThickness() {
    assertThat(over(52, 4, List.of()).orElseThrow().diameter()).isEqualTo(5);
    assertThat(over(51, 4, List.of()).orElseThrow().diameter()).isEqualTo(4.5);
    assertThat(over(38, 4, List.of()).orElseThrow().diameter()).isEqualTo(4.5);
    assertThat(over(37, 4, List.of()).orElseThrow().diameter()).isEqualTo(4);
    assertThat(over(34, 4, List.of()).orElseThrow().diameter()).isEqualTo(4);
    assertThat(over(33, 4, List.of())).isEmpty();
  }

  /** 18 of plywood and 6 d = 27 are 45, which are sold. */
  @Test
  void screwsGoInDeepEnough() {
    assertThat(over(45, 4, List.of()).orElseThrow().screwLength()).isEqualTo(45);
  }

  /**
   * Of 4.5 mm. Two and two in the stud: 12 d = 54 and 1 above its foot, the next 0.85 × 5 d =
   * 19.125 and 2 higher, on the marks 55 and 76. Four in the plate, in the middle between 14.5 and
   * 45 - 23.5, at 18, which is 27 under the stud; 0.85 × 4 d = 15.3 and 2 apart, at 8.65 and 25.95
   * from the middle, on the marks 9 and 26. Around them 7 d = 31.5 along the force: 59 down and 108
   * up; 3 d = 13.5 across it: 40 either way.
   */
  @Test
  void theRectangleIsTheSmallestAroundItsScrews() {
    GussetFit fit = over(45, 4, List.of()).orElseThrow();
    assertThat(fit.screws()).hasSize(8);
    double low = fit.screws().stream().mapToDouble(one -> one.spot().across()).min().orElseThrow();
    double high = fit.screws().stream().mapToDouble(one -> one.spot().across()).max().orElseThrow();
    assertThat(low).isCloseTo(59 - 27, within(1e-9));
    assertThat(high).isCloseTo(59 + 76, within(1e-9));
    assertThat(fit.size().across()).isCloseTo(59 + 108, within(1e-9));
    assertThat(fit.size().along()).isCloseTo(40 + 40, within(1e-9));
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

  /**
   * Of 4.5 mm it is 167 long. Of 4 mm the stud's are at 49 and 68, the plate's between 13 and 24,
   * at 18.5, on the marks 26 under the stud: 68 + 26 and twice 7 d = 28 are 150.
   */
  @Test
  void noneIsLargerThanAllowed() {
    assertThat(over(45, 4, 167, List.of()).orElseThrow().diameter()).isEqualTo(4.5);
    assertThat(over(45, 4, 166, List.of()).orElseThrow().diameter()).isEqualTo(4);
    assertThat(over(45, 4, 150, List.of())).isPresent();
    assertThat(over(45, 4, 149, List.of())).isEmpty();
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
