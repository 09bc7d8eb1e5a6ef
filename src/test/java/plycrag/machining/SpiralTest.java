package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.wall.machine.SpeedRange;
import plycrag.wall.machine.Tool;

/** A hole of 12 mm about (50, 80), from 18 mm down to -0.5 mm, the tool clear at 23 mm. */
class SpiralTest {
  private static final Xy CENTRE = new Xy(50, 80);

  private static Tool mill(double diameter, double passDepth) {
    return new Tool(
        2,
        Tool.Kind.END_MILL,
        new Tool.Shape(diameter, 30, new Tool.Point(180, 0)),
        new Tool.Drive(18_000, new SpeedRange(8000, 24_000), new Tool.Feeds(300, 1500)),
        new Tool.Steps(Optional.empty(), passDepth));
  }

  private static List<Move> bored(Tool tool, boolean arcs) {
    return new Spiral(tool, 18, 23, arcs).bore(CENTRE, 12, -0.5);
  }

  private static List<Xyz> ends(List<Move> moves) {
    List<Xyz> ends = new ArrayList<>();
    for (Move move : moves) {
      if (move instanceof Move.Cut cut) {
        ends.add(cut.to());
      } else if (move instanceof Move.Arc arc) {
        ends.add(arc.to());
      }
    }
    return ends;
  }

  private static double fromCentre(double x, double y) {
    return Math.hypot(x - 50, y - 80);
  }

  /** 18.5 mm in turns of at most 3 mm are 7; with the flat one 8 of two halves each. */
  @Test
  void arcsAreHalfTurnsAtTheRadiusThatIsLeft() {
    List<Move> moves = bored(mill(6, 6), true);
    List<Move.Arc> arcs =
        moves.stream().filter(Move.Arc.class::isInstance).map(Move.Arc.class::cast).toList();
    assertThat(arcs).hasSize(16).allMatch(arc -> arc.centre().equals(CENTRE) && !arc.clockwise());
    assertThat(arcs)
        .allSatisfy(
            arc -> assertThat(fromCentre(arc.to().x(), arc.to().y())).isCloseTo(3, within(1e-9)));
    assertThat(arcs.get(1).to().z()).isCloseTo(18 - 18.5 / 7, within(1e-9));
    assertThat(arcs.get(13).to().z()).isCloseTo(-0.5, within(1e-9));
    assertThat(moves)
        .startsWith(new Move.RapidXy(53, 80), new Move.RapidZ(23), new Move.Plunge(18, 300))
        .endsWith(new Move.Cut(new Xyz(50, 80, -0.5), 1500), new Move.RapidZ(23));
  }

  /** The middle of a straight move is where it strays farthest from the arc. */
  @ParameterizedTest
  @CsvSource({"6", "8", "10.5"})
  void straightMovesStayWithinTheStatedError(double diameter) {
    double radius = (12 - diameter) / 2;
    List<Xyz> ends = ends(bored(mill(diameter, 6), false));
    for (int at = 1; at < ends.size() - 1; at++) {
      Xyz from = ends.get(at - 1);
      Xyz to = ends.get(at);
      assertThat(fromCentre(to.x(), to.y())).isCloseTo(radius, within(1e-9));
      assertThat(fromCentre((from.x() + to.x()) / 2, (from.y() + to.y()) / 2))
          .isBetween(radius - 0.02, radius);
      assertThat(to.z()).isLessThanOrEqualTo(from.z());
    }
    assertThat(ends.get(ends.size() - 2).z()).isCloseTo(-0.5, within(1e-9));
  }

  /** A tool of 3 mm leaves no ring of more than its width uncut: 1.5, 3 and 4.5 mm are cut. */
  @Test
  void aNarrowToolLeavesNoCore() {
    List<Move> moves = bored(mill(3, 3), true);
    assertThat(moves.stream().filter(Move.RapidXy.class::isInstance))
        .containsExactly(
            new Move.RapidXy(51.5, 80), new Move.RapidXy(53, 80), new Move.RapidXy(54.5, 80));
  }

  /** The way down is no faster than the tool plunges: 300 mm/min. */
  @Test
  void goesDownNoFasterThanItPlunges() {
    List<Move> moves = bored(mill(10, 5), true);
    Move.Arc first = (Move.Arc) moves.get(3);
    double half = Math.PI * 1;
    double seconds = Math.hypot(half, 18 - first.to().z()) / first.feed();
    assertThat((18 - first.to().z()) / seconds).isLessThanOrEqualTo(300);
    assertThat(first.feed()).isLessThan(1500);
  }

  /** Nor along short moves, whichever of their ends the program rounds to its last digit. */
  @ParameterizedTest
  @CsvSource({"10.5", "10", "8", "4"})
  void noShortMoveFallsFasterThanTheToolPlunges(double diameter) {
    List<Move> moves = bored(mill(diameter, diameter), false);
    Xyz from = null;
    for (Move move : moves) {
      if (move instanceof Move.Cut cut) {
        if (from != null && from.z() > cut.to().z()) {
          double beside = Math.hypot(cut.to().x() - from.x(), cut.to().y() - from.y());
          double down = from.z() - cut.to().z();
          assertThat(cut.feed() * (down + 0.001) / (beside - 0.0014)).isLessThanOrEqualTo(300);
          assertThat(cut.feed()).isBetween(60.0, 1500.0);
        }
        from = cut.to();
      } else {
        from = null;
      }
    }
  }
}
