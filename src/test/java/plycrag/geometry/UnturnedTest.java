package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
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

  /** A taper of 2 to 1 whose upper side of 4 was moved up by 6: it ends in a tip, 4 up. */
  @Test
  void aSideThatVanishesLeavesATipWhereItsNeighboursMeet() {
    assertThat(Unturned.of(ring(0, 0, 20, 0, 9, 22, 11, 22)).corners())
        .containsExactly(corner(0, 0, 0), corner(20, 0, 1), corner(10, 20, 3));
  }

  @Test
  void twoSidesThatVanishTogetherTakeEachOtherWithThem() {
    assertThat(Unturned.of(ring(0, 0, 20, 0, 8, 24, 10, 26, 12, 24)).corners())
        .containsExactly(corner(0, 0, 0), corner(20, 0, 1), corner(10, 20, 4));
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
