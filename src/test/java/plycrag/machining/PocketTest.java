package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.machine.Tool;

/**
 * A recess of 27 mm about (50, 80), from 18 mm down to 14 mm, with a mill of 6 mm that cuts 3 mm at
 * a time: the outermost ring is (27 - 6) / 2 = 10.5 mm, so four rings no more than 3 mm apart,
 * 2.625 mm each; 4 mm are two layers of 2 mm.
 */
class PocketTest {
  private static final Xy CENTRE = new Xy(50, 80);

  private static Tool mill(double diameter) {
    return new Tool(
        2,
        Tool.Kind.END_MILL,
        new Tool.Shape(diameter, 30, new Tool.Point(180, 0)),
        new Tool.Drive(18_000, new SpeedRange(8000, 24_000), new Tool.Feeds(300, 1500)),
        new Tool.Steps(Optional.empty(), 3));
  }

  private static List<Move> cut(double diameter, boolean arcs) {
    return new Pocket(mill(diameter), 18, 23, arcs).cut(CENTRE, 27, 14);
  }

  private static List<Move.Arc> arcs(List<Move> moves) {
    return moves.stream()
        .filter(Move.Arc.class::isInstance)
        .map(Move.Arc.class::cast)
        .filter(arc -> arc.to().x() > 50)
        .toList();
  }

  /** Each layer: down the first ring, then round it and the three others; two halves each. */
  @Test
  void isClearedInLayersFromTheInsideOut() {
    List<Move.Arc> rounds = arcs(cut(6, true));
    assertThat(rounds).hasSize(10).allMatch(arc -> arc.centre().equals(CENTRE));
    double[] radii = {2.625, 2.625, 5.25, 7.875, 10.5, 2.625, 2.625, 5.25, 7.875, 10.5};
    double[] heights = {16, 16, 16, 16, 16, 14, 14, 14, 14, 14};
    for (int at = 0; at < radii.length; at++) {
      assertThat(rounds.get(at).to().x()).isCloseTo(50 + radii[at], within(1e-9));
      assertThat(rounds.get(at).to().y()).isCloseTo(80, within(1e-9));
      assertThat(rounds.get(at).to().z()).isCloseTo(heights[at], within(1e-9));
      assertThat(rounds.get(at).clockwise()).isFalse();
    }
  }

  /** Into the work once, and out of it once, off the wall. */
  @Test
  void goesInAndOutOnce() {
    List<Move> moves = cut(6, true);
    assertThat(moves)
        .startsWith(new Move.RapidXy(52.625, 80), new Move.RapidZ(23), new Move.Plunge(18, 300))
        .endsWith(new Move.Cut(new Xyz(50, 80, 14), 1500), new Move.RapidZ(23));
    assertThat(moves.stream().filter(Move.RapidXy.class::isInstance)).hasSize(1);
    assertThat(moves).contains(new Move.Cut(new Xyz(52.625, 80, 16), 1500));
  }

  /** A wide mill leaves no core along one ring: (27 - 20) / 2 = 3.5 mm, less than its radius. */
  @Test
  void aWideMillGoesRoundOnce() {
    assertThat(arcs(cut(20, true)))
        .extracting(arc -> arc.to().z())
        .containsExactly(16.0, 16.0, 14.0, 14.0);
  }

  /** Straight moves end on the rings, and none stays between them for longer than to the next. */
  @Test
  void straightMovesKeepWithinTheWall() {
    for (Move move : cut(6, false)) {
      if (move instanceof Move.Cut way) {
        double radius = Math.hypot(way.to().x() - 50, way.to().y() - 80);
        assertThat(radius).isLessThanOrEqualTo(10.5 + 1e-9);
        assertThat(way.to().z()).isBetween(14 - 1e-9, 18.0);
      }
    }
    assertThat(arcs(cut(6, false))).isEmpty();
  }
}
