package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.standing.Ground.Packed;

class GroundTest {
  private static final String WALL = "[[facet]]\nwidth = 1200\nlength = 1000\n[room]\n";

  private static Packed plate(String room) {
    return Ground.of(Walls.laidOut(WALL + room)).packed().stream()
        .filter(one -> one.mark().equals("PL1"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLevelFloorNeedsNoPacking() {
    assertThat(plate("")).isEqualTo(new Packed("PL1", 0, 0, 0));
  }

  @Test
  void aFloorThatFallsToOneEndIsPackedThere() {
    assertThat(plate("floor-fall = 12\n").begin()).isCloseTo(0, within(1e-9));
    assertThat(plate("floor-fall = 12\n").end()).isCloseTo(12, within(1e-9));
    assertThat(plate("floor-fall = -12\n").begin()).isCloseTo(12, within(1e-9));
    assertThat(plate("floor-fall = -12\n").end()).isCloseTo(0, within(1e-9));
  }

  /**
   * Toward the climber it falls by 90 · tan 2° = 3.143 mm under the plate: the plate's rear edge
   * touches it, and under its middle half of that is packed.
   */
  @Test
  void aFloorMayFallAslant() {
    Packed plate = plate("floor-fall = 12\nfloor-pitch = -2\n");
    double half = 90 * Math.tan(Math.toRadians(2)) / 2;
    assertThat(plate.begin()).isCloseTo(half, within(1e-9));
    assertThat(plate.end()).isCloseTo(12 + half, within(1e-9));
  }

  /** Base rails run out from the wall: 1000 mm and more of them fall by 1°. */
  @Test
  void railsArePackedFromRearToFront() {
    Ground ground =
        Ground.of(
            Walls.laidOut(
                """
                [[facet]]
                angle = 30
                width = 1200
                length = 2000
                [support]
                kind = "freestanding"
                [room]
                floor-pitch = -1
                """));
    assertThat(ground.packed()).isNotEmpty();
    for (Packed rail : ground.packed()) {
      assertThat(rail.mark()).startsWith("RA");
      assertThat(rail.begin()).isCloseTo(0, within(1e-9));
      assertThat(rail.end()).isGreaterThan(1000 * Math.tan(Math.toRadians(1)));
    }
  }
}
