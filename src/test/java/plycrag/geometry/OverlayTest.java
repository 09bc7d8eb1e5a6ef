package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Areas that cross themselves, as sides that were moved past each other leave them. */
class OverlayTest {
  /** Two triangles of 25 mm² that meet in the middle, told as one ring. */
  private static final Polygon BOW =
      Shapes.factory()
          .createPolygon(
              new Coordinate[] {
                new Coordinate(0, 0),
                new Coordinate(10, 10),
                new Coordinate(10, 0),
                new Coordinate(0, 10),
                new Coordinate(0, 0)
              });

  private static final Polygon RIGHT_HALF = Shapes.rectangle(5, -1, 12, 11);

  @Test
  void aFoldedAreaIsMendedBeforeItIsCut() {
    assertThat(BOW.isValid()).isFalse();
    assertThat(Shapes.shared(BOW, RIGHT_HALF).getArea()).isEqualTo(25);
    assertThat(Shapes.without((Geometry) BOW, (Geometry) RIGHT_HALF).getArea()).isEqualTo(25);
    assertThat(Shapes.without((Geometry) RIGHT_HALF, (Geometry) BOW).getArea())
        .isEqualTo(7 * 12 - 25);
  }

  @Test
  void foldedAreasComeTogether() {
    assertThat(Shapes.together(List.of(BOW, Shapes.rectangle(0, 0, 10, 5))).getArea())
        .isEqualTo(50 + 50 - 25);
  }

  /** A sliver of one step of the grid, whose corners rounding has laid on each other's sides. */
  @Test
  void aSliverIsNoFault() {
    Polygon sliver =
        Shapes.factory()
            .createPolygon(
                new Coordinate[] {
                  new Coordinate(0, 0),
                  new Coordinate(100, 0.001),
                  new Coordinate(50, 0),
                  new Coordinate(100, 0),
                  new Coordinate(0, 0.001),
                  new Coordinate(0, 0)
                });
    assertThatCode(() -> Shapes.shared(sliver, Shapes.rectangle(10, -1, 60, 1)))
        .doesNotThrowAnyException();
  }
}
