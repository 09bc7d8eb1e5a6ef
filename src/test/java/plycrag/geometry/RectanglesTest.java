package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Held against the overlay of JTS, which knows nothing of rectangles. */
class RectanglesTest {
  private static final int SIDE = 40;

  private static Polygon rectangle(List<Integer> sides) {
    return Shapes.rectangle(
        sides.get(0), sides.get(1), sides.get(0) + sides.get(2), sides.get(1) + sides.get(3));
  }

  @Property
  void shareWhatTheOverlayShares(
      @ForAll @Size(4) List<@IntRange(min = 1, max = SIDE) Integer> one,
      @ForAll @Size(4) List<@IntRange(min = 1, max = SIDE) Integer> other) {
    Polygon first = rectangle(one);
    Polygon second = rectangle(other);
    assertThat(Rectangles.shared(first, second)).contains(Shapes.areas(first.intersection(second)));
  }

  @Property
  void leaveWhatTheOverlayLeaves(
      @ForAll @Size(4) List<@IntRange(min = 1, max = SIDE) Integer> whole,
      @ForAll @Size(max = 4) List<@Size(2) List<@IntRange(min = 1, max = SIDE) Integer>> taken,
      @ForAll boolean across) {
    Polygon area = rectangle(whole);
    List<Polygon> others =
        taken.stream()
            .map(
                span ->
                    across
                        ? Shapes.rectangle(span.get(0), 0, span.get(0) + span.get(1), 3 * SIDE)
                        : Shapes.rectangle(0, span.get(0), 3 * SIDE, span.get(0) + span.get(1)))
            .toList();
    Geometry rest = area;
    for (Polygon other : others) {
      rest = rest.difference(other);
    }
    assertThat(Rectangles.without(area, others)).contains(Shapes.areas(rest));
  }

  @Test
  void haveNoAnswerForWhatEndsWithin() {
    Polygon area = Shapes.rectangle(0, 0, 10, 10);
    assertThat(Rectangles.without(area, List.of(Shapes.rectangle(2, 2, 4, 4)))).isEmpty();
  }

  @Test
  void areWholeInsideAnyConvexArea() {
    Polygon area = Shapes.rectangle(2, 2, 4, 4);
    Polygon circle = Shapes.circle(3, 3, 20);
    assertThat(Shapes.sharedAreas(area, circle)).containsExactly(area);
    assertThat(Shapes.sharedAreas(circle, area)).containsExactly(area);
  }
}
