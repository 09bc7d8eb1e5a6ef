package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.Layout;
import plycrag.layout.skin.Piece;

/**
 * A leaning strip of wall whose two pieces lie on one sheet only if their slopes face each other.
 */
class PairedPiecesTest {
  private static final Layout WALL =
      Walls.laidOut(
          """
          [[facet]]
          name = "main"
          angle = 0
          outline = [[0, 0], [900, 0], [1450, 2300], [550, 2300]]
          [sheet]
          length = 2440
          width = 1220
          lay = "up"
          [inserts]
          when-blocked = "drop"
          """);

  /** Boxes round them fit neither beside each other in 1220 nor above each other in 2440. */
  @Test
  void slopingPiecesShareASheetWhereTheirBoxesWouldNot() {
    List<Piece> pieces = WALL.facets().get(0).pieces();
    assertThat(pieces).hasSize(2).allMatch(piece -> 2 * piece.box().getWidth() > 1220);
    assertThat(pieces).allMatch(piece -> 2 * piece.box().getHeight() > 2440);
    assertThat(WALL.sheets()).hasSize(1);
    assertThat(WALL.sheets().get(0).pieces()).hasSize(2);
  }
}
