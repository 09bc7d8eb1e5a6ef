package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Unturned.Corner;

/** Outlines whose sides were moved past each other. */
class UnturnedTest {
  private static List<Coordinate> ring(double... places) {
    return IntStream.range(0, places.length / 2)
        .mapToObj(at -> new Coordinate(places[2 * at], places[2 * at + 1]))
        .toList();
  }

  private static Corner corner(double u, double v, int side) {
    return new Corner(new Coordinate(u, v), side);
  }

  @Test
  void whereNothingIsTurnedRoundItIsTheSame() {
    List<Coordinate> notched = ring(0, 0, 10, 0, 10, 10, 6, 10, 6, 4, 4, 4, 4, 10, 0, 10);
    List<Corner> corners = Unturned.of(notched).corners();
    assertThat(corners).extracting(Corner::at).containsExactlyElementsOf(notched);
    assertThat(corners).extracting(Corner::side).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
  }

  /** A taper of 4 to 1 with an upper side of 4 that is moved up by 12: it ends in a tip, 8 up. */
  @Test
  void aSideThatVanishesLeavesATipWhereItsNeighboursMeet() {
    Polygon taper = Shapes.polygon(ring(0, 0, 20, 0, 12, 32, 8, 32));
    assertThat(Unturned.moved(taper, side -> side == 2 ? 12 : 0).corners())
        .containsExactly(corner(0, 0, 0), corner(20, 0, 1), corner(10, 40, 3));
    assertThat(Unturned.moved(taper, side -> side == 2 ? 4 : 0).side(2).orElseThrow().getLength())
        .isEqualTo(2);
    assertThat(Unturned.moved(taper, side -> side == 2 ? 12 : 0).side(2)).isEmpty();
  }

  @Test
  void sidesThatVanishOneAfterTheOtherAllGo() {
    Polygon gable = Shapes.polygon(ring(0, 0, 20, 0, 12, 32, 10, 33, 8, 32));
    assertThat(Unturned.moved(gable, side -> side == 2 || side == 3 ? 20 : 0).corners())
        .containsExactly(corner(0, 0, 0), corner(20, 0, 1), corner(10, 40, 4));
  }

  /**
   * A plumb side with a slanting one below it that is moved out past all of it: their line ends
   * where it meets the upper side.
   */
  @Test
  void aSideThatItsNeighbourIsMovedPastVanishesThoughNoneCross() {
    Polygon wall = Shapes.polygon(ring(0, 0, 50, 0, 50, 30, 10, 30, 10, 20));
    assertThat(Unturned.moved(wall, side -> side == 4 ? Math.sqrt(5) * 3 : 0).corners())
        .containsExactly(
            corner(-7.5, 0, 0), corner(50, 0, 1), corner(50, 30, 2), corner(7.5, 30, 4));
  }

  /** Its neighbours run the same way, so that it is turned round and no loop comes of it. */
  @Test
  void aStepBetweenParallelSidesMayTurnRound() {
    Polygon stepped = Shapes.polygon(ring(0, 0, 10, 0, 10, 5, 8, 5, 8, 10, 0, 10));
    assertThat(Unturned.moved(stepped, side -> side == 3 ? 6 : 0).corners())
        .contains(corner(10, 5, 2), corner(14, 5, 3));
  }

  /** The largest is left of an outline that its sides cut in two. */
  @Test
  void ofTwoPartsTheLargerIsLeft() {
    assertThat(Unturned.of(ring(0, 0, 10, 0, 10, 10, 8, 10, 8, -2, 6, -2, 6, 10, 0, 10)).corners())
        .containsExactly(corner(0, 0, 0), corner(6, 0, 5), corner(6, 10, 6), corner(0, 10, 7));
  }

  @Test
  void whereAllIsTurnedRoundNothingIsCutOff() {
    assertThat(Unturned.of(ring(0, 0, 0, 10, 10, 10, 10, 0)).corners()).hasSize(4);
  }
}
