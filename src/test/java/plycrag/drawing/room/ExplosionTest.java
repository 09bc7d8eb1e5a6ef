package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;

class ExplosionTest {

  /** Walls at right angles: forward, sheets of an inside corner meet at 700 / 700 in plan. */
  @ParameterizedTest
  @CsvSource({"90, false", "-90, true"})
  void partsGoToTheSideWhereTheyPart(int turn, boolean forward) {
    Explosion explosion = Explosion.of(corner(turn));
    assertThat(explosion.sheets() > 0).isEqualTo(forward);
    assertThat(explosion.frames() > 0).isEqualTo(!forward);
  }

  /** A sheet's middle moves square to its face and to nowhere else. */
  @ParameterizedTest
  @CsvSource({"90", "-90"})
  void partsMoveSquareToTheFace(int turn) {
    CheckedLayout wall = corner(turn);
    Explosion explosion = Explosion.of(wall);
    FacetLayout facet = wall.layout().facets().get(0);
    Vector3 middle = new Vector3(600, 1000, 0);
    Vector3 sheet = explosion.sheets(facet, 0).apply(middle);
    Vector3 frame = explosion.frame(facet, 0).apply(middle);
    Vector3 apart = frame.minus(sheet);
    Vector3 across = facet.facet().plane().toRoom(new Vector3(1, 0, 0));
    Vector3 along = across.minus(facet.facet().plane().toRoom(new Vector3(0, 0, 0)));
    assertThat(apart.length()).isCloseTo(explosion.sheets() + explosion.frames(), within(1e-6));
    assertThat(Math.abs(apart.dot(along))).isLessThan(1e-6);
  }

  private static CheckedLayout corner(int turn) {
    return Walls.judged(
        """
        [[facet]]
        name = "port"
        angle = 0
        length = 2000
        width = 2400
        [[facet]]
        name = "starboard"
        beside = "port"
        turn = %d
        angle = 0
        length = 2000
        width = 2400
        [inserts]
        when-blocked = "drop"
        """
            .formatted(turn));
  }
}
