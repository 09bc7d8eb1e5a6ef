package plycrag.drawing.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/**
 * Spread labels against the best of all ways to join neighbours into rows: in the best spread every
 * row of labels that touch stands where its own moves balance.
 */
class LabelSpreadTest {
  private static final double STEP = 4;

  @Property(tries = 300)
  void movesNoMoreThanTheBestOfAllRows(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(max = 40) Integer> numbers) {
    List<Double> wished = numbers.stream().sorted().map(Integer::doubleValue).toList();
    double best =
        IntStream.range(0, 1 << (wished.size() - 1))
            .mapToObj(joints -> rows(wished, joints))
            .filter(LabelSpreadTest::isReadable)
            .mapToDouble(places -> moved(wished, places))
            .min()
            .orElseThrow();
    List<Double> spread = LabelSpread.of(wished, STEP);
    assertThat(isReadable(spread)).isTrue();
    assertThat(moved(wished, spread)).isCloseTo(best, within(1e-6));
  }

  /** Where labels stand if a bit of {@code joints} says which touch the next. */
  private static List<Double> rows(List<Double> wished, int joints) {
    List<Double> places = new ArrayList<>();
    int from = 0;
    for (int to = 0; to < wished.size(); to++) {
      boolean joined = to < wished.size() - 1 && (joints & (1 << to)) != 0;
      if (!joined) {
        double sum = wished.subList(from, to + 1).stream().mapToDouble(place -> place).sum();
        int count = to + 1 - from;
        double first = sum / count - STEP * (count - 1) / 2;
        IntStream.range(0, count).forEach(at -> places.add(first + STEP * at));
        from = to + 1;
      }
    }
    return places;
  }

  private static boolean isReadable(List<Double> places) {
    return IntStream.range(1, places.size())
        .allMatch(at -> places.get(at) - places.get(at - 1) >= STEP - 1e-9);
  }

  private static double moved(List<Double> wished, List<Double> places) {
    return IntStream.range(0, wished.size())
        .mapToDouble(at -> places.get(at) - wished.get(at))
        .map(move -> move * move)
        .sum();
  }
}
