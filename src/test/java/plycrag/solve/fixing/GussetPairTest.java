package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.fixing.Bodies.box;
import static plycrag.solve.fixing.Bodies.level;
import static plycrag.solve.fixing.Bodies.place;
import static plycrag.solve.fixing.Bodies.up;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.units.Decimal;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/**
 * Two gussets of 18 mm over a post of 45 by 90 on a rail of 90, flush in the planes y = 0 and 45,
 * with two screws a member and side.
 */
class GussetPairTest {
  private static final TimberBody RAIL = box("R", place(0, 0, 0), place(1000, 45, 90), level());
  private static final TimberBody POST = box("S", place(500, 0, 90), place(590, 45, 900), up());

  private static Optional<List<GussetFit>> over(TimberBody post, List<Solid> obstacles) {
    GussetPlan plan =
        new GussetPlan(18, 600, 2, GussetPlan.METRIC, 6, 5, 0, new Tape(LengthUnit.MM));
    return plan.onBothSides(
        List.of(new MemberPair(post, RAIL)), new RoomAround(box -> obstacles, box -> List.of()));
  }

  private static List<GussetFit> pair() {
    return over(POST, List.of()).orElseThrow();
  }

  /** As one sees them: each has its marks from its own left, so that a mark may be between them. */
  @Test
  void bothAreAlikeAndOpposite() {
    List<GussetFit> pair = pair();
    assertThat(pair).hasSize(2);
    assertThat(pair.get(0).size()).isEqualTo(pair.get(1).size());
    List<Double> low =
        pair.stream().map(fit -> least(fit.body(), place(0, 1, 0))).sorted().toList();
    assertThat(low).containsExactly(-18.0, 45.0);
    for (Vector3 way : List.of(level(), up())) {
      assertThat(least(pair.get(0).body(), way))
          .isCloseTo(least(pair.get(1).body(), way), within(1.0));
    }
  }

  private static double least(Solid body, Vector3 way) {
    return Stream.concat(body.near().stream(), body.far().stream())
        .mapToDouble(way::dot)
        .min()
        .orElseThrow();
  }

  /**
   * Of 5 mm, 18 and 6 d = 48 long at least, so 50. Four in the post, in two rows: 12 d = 60 and 1
   * above 90, the next 0.85 × 5 d = 21.25 and 2 higher, on the marks 151 and 174; the rows 0.85 × 3
   * d = 12.75 and 2 apart, on the marks 7 to both sides of 545. Four in the rail, which they pull
   * up: 7 d = 35 and 1 leave it up to 54, 3 d = 15 and 1 from 16 on; two rows about 35, 0.85 × 4 d
   * = 17 and 2 apart, at 25.5 and 44.5, on the marks 26 and 45; along it as much, 9.5 to both
   * sides, on the marks 9 to the left as one looks at it, and 10 to the right.
   */
  @Test
  void theScrewsOfBothTakeTurns() {
    assertThat(pair()).allMatch(fit -> fit.diameter() == 5 && fit.screwLength() == 50);
    assertThat(heads(-18)).containsExactly("536 26", "536 45", "538 151", "552 151");
    assertThat(heads(63)).containsExactly("538 174", "552 174", "554 26", "554 45");
  }

  /** Where screws go in at a height over the plane y = 0. */
  private static List<String> heads(double y) {
    return pair().stream()
        .flatMap(fit -> fit.rods().stream())
        .map(Rod::from)
        .filter(head -> Math.abs(head.y() - y) < 1e-9)
        .map(head -> Decimal.of(head.x(), 3) + " " + Decimal.of(head.z(), 3))
        .sorted()
        .toList();
  }

  /**
   * Around the screws of both: 7 d = 35 along the force, from 26 to 174, is 218; 3 d = 15 across
   * it, from 9 to 10, is 49.
   */
  @Test
  void eachReachesAroundTheScrewsOfBoth() {
    assertThat(pair()).extracting(GussetFit::size).containsOnly(new FacePlace(49, 218));
  }

  /** What stands 2 mm proud of one plane, or back from it, is flush on the other alone. */
  @Test
  void whatIsNotFlushOnBothSidesTakesNone() {
    assertThat(over(box("S", place(500, 0, 90), place(590, 43, 900), up()), List.of())).isEmpty();
    assertThat(over(box("S", place(500, 0, 90), place(590, 47, 900), up()), List.of())).isEmpty();
    assertThat(over(box("S", place(500, 0, 90), place(590, 45.9, 900), up()), List.of()))
        .isPresent();
  }

  @Test
  void whatIsOnOneSideLeavesNoneOnTheOther() {
    Solid before = box("B", place(0, -60, 0), place(1000, -10, 900), up()).solid();
    assertThat(over(POST, List.of(before))).isEmpty();
  }
}
