package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Held against the overlay of JTS, which knows nothing of convex areas. */
class ConvexTest {
  private static final int SIDE = 40;

  /** Two steps of the grid: an overlay bends sides where it puts corners on the grid, mm. */
  private static final double NEAR = 0.002;

  private static Polygon hull(List<List<Integer>> places) {
    Geometry hull =
        Hulls.hull(
            places.stream().map(place -> new Coordinate(place.get(0), place.get(1))).toList());
    Assume.that(hull instanceof Polygon);
    return Rings.ordered((Polygon) hull);
  }

  private static void assertAlike(List<Polygon> found, List<Polygon> expected) {
    assertThat(found).hasSameSizeAs(expected);
    for (int at = 0; at < found.size(); at++) {
      Coordinate[] one = found.get(at).getCoordinates();
      Coordinate[] other = expected.get(at).getCoordinates();
      assertThat(one).hasSameSizeAs(other);
      for (int corner = 0; corner < one.length; corner++) {
        assertThat(one[corner].distance(other[corner])).isLessThan(NEAR);
      }
    }
  }

  @Property
  void shareWhatTheOverlayShares(
      @ForAll @Size(min = 3, max = 7)
          List<@Size(2) List<@IntRange(min = 0, max = SIDE) Integer>> one,
      @ForAll @Size(min = 3, max = 7)
          List<@Size(2) List<@IntRange(min = 0, max = SIDE) Integer>> other) {
    Polygon first = hull(one);
    Polygon second = hull(other);
    assertAlike(
        Convex.shared(first, second).orElseThrow(), Shapes.areas(Shapes.shared(first, second)));
  }

  @Property
  void leaveWhatTheOverlayLeaves(
      @ForAll @Size(min = 3, max = 7)
          List<@Size(2) List<@IntRange(min = 0, max = SIDE) Integer>> one,
      @ForAll @Size(min = 3, max = 7)
          List<@Size(2) List<@IntRange(min = -SIDE, max = 2 * SIDE) Integer>> other) {
    Polygon first = hull(one);
    Polygon second = hull(other);
    Optional<List<Polygon>> left = Convex.without(first, second);
    Assume.that(left.isPresent());
    Geometry overlay = Shapes.without((Geometry) first, (Geometry) second);
    assertAlike(Shapes.areas(Shapes.whole(left.get())), Shapes.areas(overlay));
  }

  @Property
  void haveThePartOfALineThatTheOverlayHas(
      @ForAll @Size(min = 3, max = 7)
          List<@Size(2) List<@IntRange(min = 0, max = SIDE) Integer>> area,
      @ForAll @Size(4) List<@IntRange(min = 0, max = SIDE) Integer> line) {
    Coordinate from = new Coordinate(line.get(0), line.get(1));
    Coordinate to = new Coordinate(line.get(2), line.get(3));
    Assume.that(!from.equals2D(to));
    Polygon hull = hull(area);
    List<Coordinate> ends = Convex.shared(hull, from, to).orElse(List.of());
    Geometry overlay = Shapes.shared(hull, Shapes.exactLine(from, to));
    assertThat(ends.isEmpty()).isEqualTo(overlay.getLength() == 0);
    if (!ends.isEmpty()) {
      Comparator<Coordinate> order = Comparator.comparingDouble(from::distance);
      List<Coordinate> corners = List.of(overlay.getCoordinates());
      assertThat(ends.get(0).distance(corners.stream().min(order).orElseThrow())).isLessThan(NEAR);
      assertThat(ends.get(1).distance(corners.stream().max(order).orElseThrow())).isLessThan(NEAR);
    }
  }

  @Test
  void areDividedByWhatLiesAcross() {
    Polygon area = Shapes.rectangle(0, 0, 10, 4);
    Polygon across =
        Shapes.polygon(
            List.of(
                new Coordinate(3, -1),
                new Coordinate(4, -1),
                new Coordinate(6, 5),
                new Coordinate(5, 5)));
    assertThat(Convex.without(area, across).orElseThrow()).hasSize(2);
  }

  @Test
  void haveNoAnswerForWhatCutsOffACornerOrHasOne() {
    Polygon area = Shapes.rectangle(0, 0, 10, 10);
    assertThat(Convex.without(area, Shapes.rectangle(6, 6, 12, 12))).isEmpty();
    Polygon notched =
        Shapes.polygon(
            List.of(
                new Coordinate(0, 0),
                new Coordinate(10, 0),
                new Coordinate(10, 10),
                new Coordinate(5, 2)));
    assertThat(Convex.shared(area, notched)).isEmpty();
    assertThat(Convex.without(notched, area)).isEmpty();
  }
}
