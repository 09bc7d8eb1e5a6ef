package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class SolidTest {
  private static final Polygon SQUARE = Shapes.rectangle(0, 0, 10, 10);

  private static Solid box(double x, double y, double size) {
    Polygon base = Shapes.rectangle(x, y, x + size, y + size);
    return Solid.between(base, 0, base, size);
  }

  /** Boxes along the axes overlap by the least of what they share along each. */
  @Property
  void boxesOverlapByWhatTheyShare(
      @ForAll @DoubleRange(min = -15, max = 15) double x,
      @ForAll @DoubleRange(min = -15, max = 15) double y) {
    double across = 10 - Math.abs(Shapes.onGrid(x));
    double up = 10 - Math.abs(Shapes.onGrid(y));
    assertThat(box(0, 0, 10).overlap(box(x, y, 10)))
        .isCloseTo(Math.min(10, Math.min(across, up)), within(1e-6));
  }

  /** Two boxes, one turned by 45° about z: the corner lies half a diagonal from its middle. */
  @Test
  void aTurnedBoxIsMeasuredSquareToItsFaces() {
    double half = Math.sqrt(50);
    Solid turned = turned(10);
    Solid beside = box(half - 1, half - 5, 10);
    assertThat(turned.overlap(beside)).isCloseTo(1, within(1e-3));
    assertThat(turned.overlap(box(half + 1, half - 5, 10))).isCloseTo(-1, within(1e-3));
  }

  /** By 45° about z, the lower left corner where it is. */
  private static Solid turned(double size) {
    return box(0, 0, size)
        .mapped(
            at ->
                new Vector3(
                    (at.x() - at.y()) / Math.sqrt(2), (at.x() + at.y()) / Math.sqrt(2), at.z()));
  }

  /** Apart, touching or one in the other. */
  @Property
  void bodiesOverlapByMoreThanWhatIsLessThanTheirOverlap(
      @ForAll @DoubleRange(min = -25, max = 15) double x,
      @ForAll @DoubleRange(min = -15, max = 25) double y) {
    Solid box = box(x, y, 10);
    double overlap = turned(10).overlap(box);
    assertThat(turned(10).overlapsByMoreThan(overlap - 1e-6, box)).isTrue();
    assertThat(turned(10).overlapsByMoreThan(overlap + 1e-6, box)).isFalse();
  }

  /** A plate that leans to the right by 1 in 1: at depth w it covers u from w to w + 10. */
  @Test
  void theNearestSectionCounts() {
    Solid leaning = Solid.between(SQUARE, 0, Shapes.rectangle(20, 0, 30, 10), 20);
    assertThat(leaning.distance(Shapes.point(35, 5), 0, 20)).isCloseTo(5, within(1e-6));
    assertThat(leaning.distance(Shapes.point(35, 5), 0, 10)).isCloseTo(15, within(1e-6));
    assertThat(leaning.distance(Shapes.point(15, 5), 0, 20)).isCloseTo(-5, within(1e-3));
    assertThat(leaning.outside(Shapes.point(35, 5), 0, 20)).isCloseTo(5, within(1e-6));
    assertThat(leaning.outside(Shapes.point(15, 5), 0, 20)).isZero();
    assertThat(leaning.outside(Shapes.point(15, 5), 21, 40)).isInfinite();
    assertThat(leaning.distance(Shapes.point(15, 5), 21, 40)).isInfinite();
  }
}
