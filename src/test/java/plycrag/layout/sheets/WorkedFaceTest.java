package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.layout.Layout;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace.Order;

/** Turned over about the middle of its width, what lay at x lies at the width less x. */
class WorkedFaceTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1100
      length = 900
      [inserts]
      when-blocked = "drop"
      [machine]
      marks = "behind"
      [nesting]
      edge-trim = 20
      grain = "%s"
      """;

  @ParameterizedTest
  @ValueSource(strings = {"kept", "free"})
  void theBackIsTheFrontTurnedOver(String grain) {
    Layout layout = Walls.laidOut(WALL.formatted(grain));
    LaidSheet front = layout.sheets().get(0);
    List<WorkedFace> faces = WorkedFace.of(layout.wall(), front);
    assertThat(faces).extracting(WorkedFace::order).containsExactly(Order.FIRST, Order.SECOND);
    LaidSheet back = faces.get(0).sheet();
    assertThat(faces.get(1).sheet()).isEqualTo(front);
    assertThat(back.faceUp()).isEqualTo(SheetFace.BACK);
    double width = front.stock().width();
    for (int at = 0; at < front.pieces().size(); at++) {
      Coordinate place = new Coordinate(123, 456);
      Coordinate before = front.pieces().get(at).placement().of(place);
      Coordinate after = back.pieces().get(at).placement().of(place);
      assertThat(after.x).isCloseTo(width - before.x, within(1e-6));
      assertThat(after.y).isCloseTo(before.y, within(1e-6));
    }
  }

  /** Seen from the front, marks keep clear of the holes that are drilled from there later. */
  @ParameterizedTest
  @ValueSource(strings = {"kept", "free"})
  void marksKeepClearOfHolesFromTheOtherFace(String grain) {
    Layout layout = Walls.laidOut(WALL.formatted(grain));
    LaidSheet front = layout.sheets().get(0);
    WorkedFace first = WorkedFace.of(layout.wall(), front).get(0);
    double width = front.stock().width();
    assertThat(first.marks()).hasSameSizeAs(front.pieces());
    for (EngravedMark mark : first.marks()) {
      Envelope box = mark.box();
      Envelope seen =
          new Envelope(width - box.getMaxX(), width - box.getMinX(), box.getMinY(), box.getMaxY());
      for (MachinedHole hole : front.holes()) {
        double apart =
            seen.distance(new Envelope(new Coordinate(hole.spot().x(), hole.spot().y())));
        assertThat(apart).as(hole.mark()).isGreaterThan(13 + 3);
      }
    }
  }

  /** Recesses lie where the holes come out; marks that face the climber stay with the front. */
  @Test
  void recessesAreInTheBackWhicheverFaceLiesUp() {
    String recessed =
        WALL.formatted("kept")
            .replace("[inserts]", "[inserts]\nrecess-depth = 3")
            .replace("behind", "engraved");
    Layout layout = Walls.laidOut(recessed);
    LaidSheet front = layout.sheets().get(0);
    List<WorkedFace> faces = WorkedFace.of(layout.wall(), front);
    assertThat(faces).extracting(WorkedFace::order).containsExactly(Order.FIRST, Order.SECOND);
    assertThat(faces.get(0).marks()).isEmpty();
    assertThat(faces.get(1).marks()).hasSameSizeAs(front.pieces());
    List<MachinedHole> recesses = faces.get(0).sheet().holes(Kind.RECESS);
    assertThat(recesses).hasSameSizeAs(front.inserts()).isNotEmpty();
    for (int at = 0; at < recesses.size(); at++) {
      MachinedHole recess = recesses.get(at);
      assertThat(recess.mark()).isEqualTo(front.inserts().get(at).mark());
      assertThat(recess.spot().x()).isEqualTo(2440 - front.inserts().get(at).spot().x());
      assertThat(recess.bore().diameter()).isEqualTo(27);
      assertThat(recess.bore().depth()).isEqualTo(3);
      assertThat(recess.bore().side()).isEqualTo(SheetFace.BACK);
    }
    Layout back = Walls.laidOut(recessed.replace("[nesting]", "[nesting]\nface-up = \"back\""));
    assertThat(back.faces()).extracting(WorkedFace::order).containsOnly(Order.ONLY);
    assertThat(back.faces().get(0).sheet().holes(Kind.RECESS))
        .hasSameSizeAs(back.faces().get(0).sheet().inserts());
  }
}
