package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.fixing.Bodies.box;
import static plycrag.solve.fixing.Bodies.level;
import static plycrag.solve.fixing.Bodies.place;
import static plycrag.solve.fixing.Bodies.up;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.catalog.SteelCatalog;
import plycrag.geometry.Rod;
import plycrag.geometry.Vector3;

/** By EN 1995-1-1 Table 8.2 (predrilled) and 8.7.2 (six diameters deep): worked by hand. */
class SteelPlanTest {

  private static SteelPlan plan(Shape shape, int screws) {
    return new SteelPlan(SteelCatalog.BY_REQUIREMENT, shape, screws, false, 6, 5, place -> true);
  }

  /** A plate of 45 by a depth along x, and an upright of the same section on its middle. */
  private static SteelChoice upright(double breadth, double depth, int screws, TimberBody... more) {
    TimberBody plate = box("P", place(0, 0, 0), place(1000, depth, breadth), level());
    TimberBody stud = box("S", place(500, 0, breadth), place(500 + breadth, depth, 900), up());
    return plan(Shape.ANGLE, screws).onCorner(stud, plate, List.of(more));
  }

  /**
   * 45 by 90: screws of 5 mm keep 7 d = 35 of both sides in two lines of 18 apart (36 remain), and
   * of 35 mm go 33 deep: 30 are asked for, 40 at most.
   */
  @Test
  void anUprightOnAPlateTakesTheThickestScrews() {
    SteelFit fit = upright(45, 90, 8).fit().orElseThrow();
    assertThat(fit.steel().legs().length()).isEqualTo(65);
    assertThat(fit.steel().legs().width()).isEqualTo(40);
    assertThat(fit.diameter()).isEqualTo(5);
    assertThat(fit.length()).isEqualTo(35);
    assertThat(fit.bite(0)).isEqualTo(33);
    assertThat(fit.angle()).isEqualTo(90);
    assertThat(fit.screws()).isEqualTo(8);
  }

  /** 45 by 60: two lines leave 21, which is less than 5 × 4.5; one line leaves 30, less than 35. */
  @Test
  void narrowFacesTakeOneLineOfThinnerScrews() {
    SteelFit fit = upright(45, 60, 8).fit().orElseThrow();
    assertThat(fit.steel().holes().lines()).isEqualTo(1);
    assertThat(fit.diameter()).isEqualTo(4.5);
    assertThat(fit.steel().legs().length()).isEqualTo(80);
  }

  /**
   * A post on a rail of the same section, flush on two sides. Screws of 4 mm keep 12 d = 48 of the
   * post's end; their second row, 62 off, leaves 28 to the rail's lower side, of which 5 d = 20 are
   * asked. Of 5 mm, 80 off, they would leave 10 of 35.
   */
  @Test
  void whatLiesFlushTakesStrapsOnBothSides() {
    TimberBody rail = box("R", place(0, 0, 0), place(1000, 45, 90), level());
    TimberBody post = box("S", place(500, 0, 90), place(590, 45, 900), up());
    SteelChoice straps = plan(Shape.STRAP, 8).onBothSides(post, rail, List.of());
    assertThat(straps.fit().orElseThrow().diameter()).isEqualTo(4);
    assertThat(straps.fit().orElseThrow().steel().legs().length()).isEqualTo(85);
    assertThat(straps.places()).hasSize(2);
    SteelPlace one = straps.places().get(0);
    SteelPlace other = straps.places().get(1);
    assertThat(one.outward().dot(other.outward())).isCloseTo(-1, within(1e-9));
    for (Rod screw : one.screws()) {
      assertThat(other.screws()).noneMatch(met -> screw.body().overlapsByMoreThan(-1, met.body()));
    }
    TimberBody beside = box("B", place(0, 45, 0), place(1000, 90, 90), level());
    assertThat(plan(Shape.STRAP, 8).onBothSides(post, rail, List.of(beside)).fit()).isEmpty();
    assertThat(plan(Shape.STRAP, 8).onFlush(post, rail, List.of(beside)).places()).hasSize(1);
  }

  /** In the corner of an upright at 500 to 545 and a plate 45 high, as it is seen from the left. */
  @Test
  void aBracketSaysWhereItLies() {
    SteelPlace place = upright(45, 90, 8).places().get(0);
    boolean isLeft = place.middle().x() == 500;
    assertThat(place.middle()).isEqualTo(place(isLeft ? 500 : 545, 45, 45));
    assertThat(place.outward().x())
        .isCloseTo(isLeft ? -Math.sqrt(0.5) : Math.sqrt(0.5), within(1e-9));
    assertThat(place.outward().z()).isCloseTo(Math.sqrt(0.5), within(1e-9));
    assertThat(place.screws()).hasSize(8);
    for (Rod screw : place.screws().subList(0, 4)) {
      assertThat(screw.from().x()).isCloseTo(isLeft ? 498 : 547, within(1e-9));
      assertThat(screw.way().x()).isCloseTo(isLeft ? 1 : -1, within(1e-9));
      assertThat(screw.from().y()).isIn(36.0, 54.0);
    }
    assertThat(place.plates()).hasSize(2);
    assertThat(Math.abs(place.surface().volume())).isCloseTo(40 * (65 * 2 + 63 * 2), within(1e-3));
  }

  /** What is in the way of its screws moves a piece aside or to the other face. */
  @Test
  void keepsOutOfWhatIsThereAlready() {
    TimberBody plate = box("P", place(0, 0, 0), place(1000, 90, 45), level());
    TimberBody stud = box("S", place(500, 0, 45), place(545, 90, 900), up());
    SteelPlan right =
        new SteelPlan(
            SteelCatalog.BY_REQUIREMENT,
            Shape.ANGLE,
            8,
            false,
            6,
            5,
            place -> place.middle().x() > 520);
    assertThat(right.onCorner(stud, plate, List.of()).places().get(0).middle().x()).isEqualTo(545);
    SteelPlan nowhere =
        new SteelPlan(SteelCatalog.BY_REQUIREMENT, Shape.ANGLE, 8, false, 6, 5, place -> false);
    assertThat(nowhere.onCorner(stud, plate, List.of()).fit()).isEmpty();
  }

  /**
   * Two posts whose edges meet in the corner of a room: on sides 90 deep screws of 5 mm keep 7 d =
   * 35 of the corner, and 20 further on 35 of the other edge; the outer ones 36 = 45 - 9 of the
   * ends.
   */
  @Test
  void whatOnlyMeetsAtItsEdgesTakesABracketBehind() {
    TimberBody left = box("L", place(-45, 0, 0), place(0, 90, 2000), up());
    TimberBody right = box("R", place(0, -45, 0), place(90, 0, 2000), up());
    SteelChoice row = plan(Shape.ANGLE, 8).onEdges(left, right, List.of(), 3);
    SteelFit fit = row.fit().orElseThrow();
    assertThat(row.places())
        .extracting(one -> one.middle().z())
        .containsExactly(45.0, 1000.0, 1955.0);
    assertThat(fit.steel().legs().length()).isEqualTo(65);
    assertThat(fit.angle()).isEqualTo(90);
    TimberBody apart = box("A", place(6, -45, 0), place(96, 0, 2000), up());
    assertThat(plan(Shape.ANGLE, 8).onEdges(left, apart, List.of(), 3).fit()).isEmpty();
  }

  /** Two a leg fit into a smaller one. */
  @Test
  void fewerScrewsTakeASmallerOne() {
    assertThat(upright(45, 60, 4).fit().orElseThrow().steel().legs().length()).isEqualTo(55);
    assertThat(upright(45, 90, 12).fit().orElseThrow().steel().legs().length()).isEqualTo(85);
  }

  /** In 38 mm a screw goes 33 deep at most: with 5 mm just 33. In 25 mm 20: 3.3 mm would do. */
  @Test
  void noScrewComesOutOfTheFarSide() {
    assertThat(upright(38, 90, 8).fit().orElseThrow().bite(0)).isEqualTo(33);
    SteelChoice thin = upright(25, 90, 8);
    assertThat(thin.fit()).isEmpty();
    assertThat(thin.room().orElseThrow().diameter()).isCloseTo(3.3, within(1e-9));
    assertThat(upright(20, 90, 8).room().orElseThrow().diameter()).isZero();
  }

  /**
   * Another upright 60 mm to the right leaves 60 there; the left is free. On both sides nothing.
   */
  @Test
  void legsMeetNoOtherTimber() {
    TimberBody right = box("R", place(605, 0, 45), place(650, 90, 900), up());
    TimberBody left = box("L", place(395, 0, 45), place(440, 90, 900), up());
    assertThat(upright(45, 90, 8, right).fit()).isPresent();
    SteelChoice both = upright(45, 90, 8, right, left);
    assertThat(both.fit().orElseThrow().diameter()).isEqualTo(4.5);
    assertThat(both.fit().orElseThrow().steel().legs().length()).isEqualTo(60);
    TimberBody near = box("R", place(595, 0, 45), place(640, 90, 900), up());
    SteelChoice none = upright(45, 90, 8, near, left);
    assertThat(none.fit().orElseThrow().steel().legs().length()).isEqualTo(60);
    TimberBody nearLeft = box("L", place(405, 0, 45), place(450, 90, 900), up());
    SteelChoice.Room room = upright(45, 90, 8, near, nearLeft).room().orElseThrow();
    assertThat(room.leg()).isCloseTo(50, within(1e-3));
    assertThat(room.first()).isCloseTo(35, within(1e-9));
  }

  /** At the end of a plate the leg lies on the inner side alone. */
  @Test
  void nothingHangsOverAnEnd() {
    TimberBody plate = box("P", place(0, 0, 0), place(1000, 90, 45), level());
    TimberBody stud = box("S", place(0, 0, 45), place(45, 90, 900), up());
    assertThat(plan(Shape.ANGLE, 8).onCorner(stud, plate, List.of()).fit()).isPresent();
    TimberBody stub = box("P", place(0, 0, 0), place(60, 90, 45), level());
    assertThat(plan(Shape.ANGLE, 8).onCorner(stud, stub, List.of()).fit()).isEmpty();
  }

  /** Flush on all sides there is no corner. */
  @Test
  void flushMembersHaveNoCorner() {
    TimberBody rail = box("P", place(0, 0, 0), place(45, 45, 90), level());
    TimberBody post = box("S", place(0, 0, 90), place(45, 45, 900), up());
    SteelChoice choice = plan(Shape.ANGLE, 8).onCorner(post, rail, List.of());
    assertThat(choice.fit()).isEmpty();
    assertThat(choice.room().map(SteelChoice.Room::screws).orElse(0)).isZero();
  }

  /** 12 d = 60 to the ends, 15 to the sides: 50 of 90 remain for two lines of 20. */
  @Test
  void aStrapLiesOverTwoLengths() {
    TimberBody one = box("A", place(0, 0, 0), place(1000, 90, 45), level());
    TimberBody two = box("B", place(1000, 0, 0), place(2000, 90, 45), level());
    SteelFit fit = plan(Shape.STRAP, 8).onFlush(one, two, List.of()).fit().orElseThrow();
    assertThat(fit.steel().legs().length()).isEqualTo(90);
    assertThat(fit.diameter()).isEqualTo(5);
    assertThat(fit.angle()).isEqualTo(180);
    assertThat(fit.bite(0)).isBetween(30.0, 85.0);
  }

  /** Through 18 mm of sheet and 3 mm of steel 4.5 mm go 29 deep with 50; 27 are asked for. */
  @Test
  void hingesAreScrewedThroughTheSheets() {
    SteelChoice hinges = hinges(45);
    SteelFit fit = hinges.fit().orElseThrow();
    assertThat(fit.steel().legs().length()).isEqualTo(45);
    assertThat(fit.length()).isEqualTo(50);
    assertThat(fit.bite(18)).isEqualTo(29);
    assertThat(hinges.places()).hasSize(2);
    assertThat(hinges.places().get(0).screws()).hasSize(8);
    assertThat(hinges.places().get(0).screws().get(0).from().x()).isCloseTo(12.5, within(1e-9));
    assertThat(hinges.places().get(0).screws().get(0).from().y()).isCloseTo(-21, within(1e-9));
    assertThat(hinges(30).fit()).isEmpty();
  }

  /** Two plates behind sheets of 18 mm in one plane, which fold at a height of 45 mm. */
  private static SteelChoice hinges(double breadth) {
    TimberBody low = box("L", place(0, 0, 0), place(1000, 90, 45), level());
    TimberBody high = box("H", place(0, 0, 45), place(1000, 90, 90), level());
    Vector3 front = place(0, -1, 0);
    Crease crease =
        new Crease(
            place(500, -18, 45), level(), 1000, place(0, 0, -1), front, place(0, 0, 1), front);
    return plan(Shape.HINGE, 8).onCrease(crease, low, high, 2, breadth, 90, 18);
  }
}
