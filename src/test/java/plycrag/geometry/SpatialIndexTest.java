package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class SpatialIndexTest {
  private static final int SIDE = 1_000;

  private static Envelope box(List<Integer> sides) {
    return new Envelope(
        sides.get(0), sides.get(0) + sides.get(2), sides.get(1), sides.get(1) + sides.get(3));
  }

  @Property
  void findsInOrderWhatALookAtEachWouldFind(
      @ForAll @Size(max = 200) List<@Size(4) List<@IntRange(min = 0, max = SIDE) Integer>> sides,
      @ForAll @Size(4) List<@IntRange(min = 0, max = SIDE) Integer> asked,
      @ForAll @IntRange(min = 0, max = SIDE) int reach) {
    List<Envelope> boxes = sides.stream().map(SpatialIndexTest::box).toList();
    List<Integer> numbers = IntStream.range(0, boxes.size()).boxed().toList();
    Envelope wider = box(asked);
    wider.expandBy(reach);
    assertThat(new SpatialIndex<>(numbers, boxes::get).near(box(asked), reach))
        .isEqualTo(numbers.stream().filter(at -> boxes.get(at).intersects(wider)).toList());
  }

  @Test
  void leavesOutWhatHasNoBox() {
    List<Envelope> boxes = List.of(new Envelope(), new Envelope(1, 1, 2, 2));
    SpatialIndex<Envelope> index = new SpatialIndex<>(boxes, box -> box);
    assertThat(index.near(new Envelope(0, 9, 0, 9), 0)).containsExactly(boxes.get(1));
    assertThat(index.near(new Envelope(), 1)).isEmpty();
  }
}
