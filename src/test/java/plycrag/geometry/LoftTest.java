package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Volumes and centres worked by hand: prisms and pyramids, no source needed. */
class LoftTest {
  private static final Polygon SQUARE = Shapes.rectangle(0, 0, 100, 100);

  /** The square without its upper right corner, a triangle of 10 by 10. */
  private static final Polygon CHAMFERED =
      Shapes.polygon(
          List.of(
              new Coordinate(0, 0),
              new Coordinate(100, 0),
              new Coordinate(100, 90),
              new Coordinate(90, 100),
              new Coordinate(0, 100)));

  /** From a block of 100 × 100 × 18 a pyramid is cut off: 50 mm² at its base, 18 high. */
  @Test
  void aCornerOfOneFaceJoinsTwoOfTheOther() {
    double off = 50.0 * 18 / 3;
    assertThat(volume(SQUARE, CHAMFERED)).isCloseTo(180_000 - off, within(1e-6));
    assertThat(volume(CHAMFERED, SQUARE)).isCloseTo(180_000 - off, within(1e-6));
  }

  /**
   * The pyramid's centre of gravity is a quarter of its height from its base, which lies at 18; its
   * corners are (100, 100, 0) and, at 18, (100, 90), (100, 100) and (90, 100).
   */
  @Test
  void theCentreIsThatOfTheBlockWithoutThePyramid() {
    double off = 300;
    double u = (100 + 100 + 100 + 90) / 4.0;
    Volume bulk = Volume.of(Solid.joining(SQUARE, 0, CHAMFERED, 18));
    assertThat(bulk.centre().x())
        .isCloseTo((180_000 * 50 - off * u) / (180_000 - off), within(1e-9));
    assertThat(bulk.centre().z())
        .isCloseTo((180_000 * 9 - off * 13.5) / (180_000 - off), within(1e-9));
  }

  /** Both faces chamfered, at different corners: two pyramids are cut off. */
  @Test
  void asManyCornersNeedNotMatch() {
    Polygon other =
        Shapes.polygon(
            List.of(
                new Coordinate(10, 0),
                new Coordinate(100, 0),
                new Coordinate(100, 100),
                new Coordinate(0, 100),
                new Coordinate(0, 10)));
    assertThat(volume(CHAMFERED, other)).isCloseTo(180_000 - 2 * 300, within(1e-6));
  }

  @Test
  void bodiesWithRepeatedCornersAreMeasured() {
    Solid body = Solid.joining(SQUARE, 0, CHAMFERED, 18);
    Polygon beside = Shapes.rectangle(97, 0, 120, 50);
    assertThat(body.overlap(Solid.between(beside, 0, beside, 18))).isCloseTo(3, within(1e-9));
    Polygon above = Shapes.rectangle(0, 0, 50, 50);
    assertThat(body.overlap(Solid.between(above, 18, above, 30))).isCloseTo(0, within(1e-9));
  }

  private static double volume(Polygon near, Polygon far) {
    return Volume.of(Solid.joining(near, 0, far, 18)).volume();
  }
}
