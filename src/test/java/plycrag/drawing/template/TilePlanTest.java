package plycrag.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;

class TilePlanTest {
  private static final TilePlan PLAN = new TilePlan(190, 253, 12);

  @Provide
  Arbitrary<List<Xy>> holes() {
    Arbitrary<Integer> across = Arbitraries.integers().between(20, 1200);
    Arbitrary<Integer> up = Arbitraries.integers().between(20, 900);
    return Combinators.combine(across, up)
        .as((x, y) -> new Xy(x, y))
        .list()
        .ofMinSize(1)
        .ofMaxSize(40);
  }

  @Property(tries = 100)
  void everyHoleBelongsToOneTileAndLiesWholeOnIt(@ForAll("holes") List<Xy> holes) {
    List<TilePlan.Tile> tiles = PLAN.of(holes);
    assertThat(tiles.stream().flatMap(tile -> tile.holes().stream()))
        .containsExactlyInAnyOrderElementsOf(holes);
    for (TilePlan.Tile tile : tiles) {
      assertThat(tile.holes()).isNotEmpty();
      assertThat(tile.window().getWidth()).isEqualTo(190);
      assertThat(tile.window().getHeight()).isEqualTo(253);
      for (Xy hole : tile.holes()) {
        Envelope around = new Envelope(hole.x(), hole.x(), hole.y(), hole.y());
        around.expandBy(11.999);
        assertThat(tile.window().contains(around)).isTrue();
      }
    }
  }

  /** A grid of tiles laid from the corner, those without a hole left out, is the plain way. */
  @Property(tries = 100)
  void takesNoMoreThanAPlainGrid(@ForAll("holes") List<Xy> holes) {
    Set<List<Long>> plain = new HashSet<>();
    for (Xy hole : holes) {
      plain.add(List.of((long) Math.floor(hole.x() / 166), (long) Math.floor(hole.y() / 229)));
    }
    assertThat(PLAN.of(holes)).hasSizeLessThanOrEqualTo(plain.size());
  }

  /** Two clusters on either side of a grid's line: one tile each is the least there can be. */
  @Test
  void leavesOutWhatHasNoHole() {
    List<Xy> holes =
        List.of(new Xy(150, 200), new Xy(180, 240), new Xy(1000, 800), new Xy(1100, 850));
    assertThat(PLAN.of(holes)).extracting(TilePlan.Tile::name).containsExactly("A1", "B1");
  }

  @Test
  void neighboursLapWhereItCostsNothing() {
    List<Xy> row = IntStream.range(0, 8).mapToObj(at -> new Xy(50 + 40 * at, 100)).toList();
    List<TilePlan.Tile> tiles = PLAN.of(row);
    assertThat(tiles).hasSize(2);
    double lap = tiles.get(0).window().getMaxX() - tiles.get(1).window().getMinX();
    assertThat(lap).isGreaterThanOrEqualTo(TilePlan.LAP);
  }
}
