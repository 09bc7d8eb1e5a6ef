package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.layout.Layout;

/** Distances measured here from the sheet's holes and edges, not as the search does. */
class EngravedMarksTest {
  private static final String WALL =
      """
      [[facet]]
      name = "bay"
      width = 1500
      length = 1300
      [inserts]
      when-blocked = "drop"
      [machine]
      marks = "engraved"
      screw-holes = "through"
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      [[keep-out]]
      name = "clamp"
      left = 0
      low = 0
      width = 300
      height = 200
      rise = 10
      [nesting]
      """;

  @ParameterizedTest
  @ValueSource(strings = {"", "face-up = \"back\"", "grain = \"free\"\nface-up = \"back\""})
  void everyPieceIsMarkedClearOfAll(String nesting) {
    Layout layout = Walls.laidOut(WALL + nesting);
    for (LaidSheet sheet : layout.sheets()) {
      List<EngravedMark> marks = EngravedMarks.of(layout.wall(), sheet);
      assertThat(marks).hasSameSizeAs(sheet.pieces());
      for (int at = 0; at < marks.size(); at++) {
        EngravedMark mark = marks.get(at);
        LaidPiece laid = sheet.pieces().get(at);
        assertThat(mark.text()).startsWith(laid.piece().mark()).isIn(both(laid));
        assertClear(mark.box(), laid, sheet);
      }
    }
  }

  private static List<String> both(LaidPiece laid) {
    return List.of(laid.piece().mark(), laid.piece().mark() + " BAY");
  }

  private static void assertClear(Envelope box, LaidPiece laid, LaidSheet sheet) {
    Envelope grown = new Envelope(box);
    grown.expandBy(3.9);
    assertThat(laid.box().contains(grown)).isTrue();
    assertThat(box.distance(new Envelope(0, 300, 0, 200))).isGreaterThan(3 + 1);
    for (MachinedHole hole : sheet.holes()) {
      double covered = hole.kind() == MachinedHole.Kind.INSERT ? 13 : hole.bore().diameter() / 2;
      double apart = box.distance(new Envelope(new Coordinate(hole.spot().x(), hole.spot().y())));
      assertThat(apart).as(hole.mark()).isGreaterThan(covered + 3);
    }
  }

  /** Seen from the face it is in, a text runs to the right on the wall: from behind, u falls. */
  @ParameterizedTest
  @ValueSource(strings = {"front", "back"})
  void aMarkStandsUprightAsThePieceDoes(String face) {
    Layout layout = Walls.laidOut(WALL + "face-up = \"" + face + "\"");
    LaidSheet sheet = layout.sheets().get(0);
    EngravedMark mark = EngravedMarks.of(layout.wall(), sheet).get(0);
    Coordinate begin = mark.at(0, 0);
    Coordinate right = mark.at(10, 0);
    Coordinate up = mark.at(0, 10);
    double turn = (right.x - begin.x) * (up.y - begin.y) - (right.y - begin.y) * (up.x - begin.x);
    assertThat(turn).isPositive();
    Coordinate end = mark.placement().of(new Coordinate(mark.corner().x + 10, mark.corner().y));
    boolean risesWithU = end.distance(right) < 1e-6;
    assertThat(risesWithU).isEqualTo(face.equals("front"));
  }
}
