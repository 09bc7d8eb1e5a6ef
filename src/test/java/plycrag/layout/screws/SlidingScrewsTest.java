package plycrag.layout.screws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import plycrag.geometry.Direction.Span;

class SlidingScrewsTest {

  @Example
  void aScrewSlidesToTheNearerEndOfWhatIsTaken() {
    SlidingScrews sliding = new SlidingScrews(0, 300, 160, 1, List.of(new Span(140, 165)));
    assertThat(sliding.nearest(List.of(0.0, 150.0, 300.0))).hasValue(List.of(0.0, 140.0, 300.0));
  }

  /** 130 leaves 170 to the other end, more than 160. */
  @Example
  void anEndScrewSlidesInwardWhereTheSpacingAsksForIt() {
    SlidingScrews sliding = new SlidingScrews(0, 300, 160, 1, List.of(new Span(130, 175)));
    assertThat(sliding.nearest(List.of(0.0, 150.0, 300.0))).hasValue(List.of(0.0, 130.0, 290.0));
  }

  /** Free are 0 to 5, 100 to 105, 200 to 205 and 295 to 300; three of those lie too far apart. */
  @Example
  void thereIsOneMoreWhereTheSpacingWouldNotHold() {
    List<Span> taken = List.of(new Span(5, 100), new Span(105, 200), new Span(205, 295));
    SlidingScrews sliding = new SlidingScrews(0, 300, 160, 1, taken);
    assertThat(sliding.nearest(List.of(0.0, 150.0, 300.0)))
        .hasValue(List.of(0.0, 100.0, 200.0, 300.0));
  }

  @Example
  void theEndScrewsSlideInwardOnly() {
    SlidingScrews sliding = new SlidingScrews(0, 100, 160, 1, List.of(new Span(-10, 20)));
    assertThat(sliding.nearest(List.of(0.0, 100.0))).hasValue(List.of(20.0, 100.0));
  }

  @Example
  void whereAllIsTakenThereIsNone() {
    SlidingScrews sliding = new SlidingScrews(0, 100, 160, 1, List.of(new Span(-1, 101)));
    assertThat(sliding.nearest(List.of(0.0, 100.0))).isEmpty();
  }

  /** Against trying every place of three screws. */
  @Property(tries = 100)
  void noThreeScrewsMoveLess(
      @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 0, max = 55) Integer> taken) {
    List<Span> spans = taken.stream().map(low -> new Span(low, low + 9.0)).toList();
    SlidingScrews sliding = new SlidingScrews(0, 60, 40, 1, spans);
    int least = Integer.MAX_VALUE;
    for (int first = 0; first <= 20; first++) {
      for (int middle = first + 20; middle <= first + 40; middle++) {
        for (int last = Math.max(40, middle + 20); last <= Math.min(60, middle + 40); last++) {
          if (sliding.areFree(List.of((double) first, (double) middle, (double) last))) {
            least = Math.min(least, first + Math.abs(middle - 30) + 60 - last);
          }
        }
      }
    }
    List<Double> found =
        new ArrayList<>(sliding.nearest(List.of(0.0, 30.0, 60.0)).orElse(List.of()));
    assertThat(found.size() == 3).isEqualTo(least < Integer.MAX_VALUE);
    if (found.size() == 3) {
      assertThat(found.get(0) + Math.abs(found.get(1) - 30) + 60 - found.get(2)).isEqualTo(least);
      assertThat(sliding.areFree(found)).isTrue();
    }
  }
}
