package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineSegment;

class StrokesTest {

  @Test
  void whatIsThereAlreadyIsLeftOut() {
    Strokes strokes = new Strokes();
    assertThat(strokes.add(new LineSegment(10, 0, 20, 0))).hasSize(1);
    assertThat(strokes.add(new LineSegment(0, 0, 30, 0)))
        .containsExactly(new LineSegment(0, 0, 10, 0), new LineSegment(20, 0, 30, 0));
    assertThat(strokes.add(new LineSegment(25, 0, 5, 0))).isEmpty();
  }

  @Test
  void whatOnlyTouchesCrossesOrRunsBesideIsWhole() {
    Strokes strokes = new Strokes();
    strokes.add(new LineSegment(0, 0, 10, 0));
    for (LineSegment other :
        List.of(
            new LineSegment(10, 0, 20, 0),
            new LineSegment(5, -5, 5, 5),
            new LineSegment(0, 0.02, 10, 0.02),
            new LineSegment(0, 0, 10, 1))) {
      assertThat(strokes.add(other)).containsExactly(other);
    }
  }

  /** On a line of whole numbers, what was kept covers what was drawn, each unit once. */
  @Property(tries = 300)
  void everyUnitIsKeptOnce(
      @ForAll @Size(min = 2, max = 20) List<@IntRange(max = 30) Integer> ends) {
    Strokes strokes = new Strokes();
    int[] drawn = new int[31];
    double kept = 0;
    List<LineSegment> parts = new ArrayList<>();
    for (int at = 1; at < ends.size(); at++) {
      int low = Math.min(ends.get(at - 1), ends.get(at));
      int high = Math.max(ends.get(at - 1), ends.get(at));
      if (low < high) {
        parts.addAll(strokes.add(new LineSegment(3 * low, 4 * low, 3 * high, 4 * high)));
        for (int unit = low; unit < high; unit++) {
          drawn[unit] = 5;
        }
      }
    }
    for (LineSegment part : parts) {
      kept += part.getLength();
    }
    int covered = 0;
    for (int unit : drawn) {
      covered += unit;
    }
    assertThat(kept).isCloseTo(covered, within(1e-6));
  }
}
