package plycrag.solve.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static plycrag.solve.fixing.Bodies.box;
import static plycrag.solve.fixing.Bodies.level;
import static plycrag.solve.fixing.Bodies.place;
import static plycrag.solve.fixing.Bodies.up;

import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import plycrag.units.LengthUnit;
import plycrag.units.Tape;

/** Screws of 5 mm through a plate of 1000 by 90 by 45 into the foot of a stud on it. */
class EndScrewsTest {
  private static final TimberBody PLATE = box("P", place(0, 0, 0), place(1000, 90, 45), level());

  private static TimberBody stud(double from, double to) {
    return box("S", place(from, 0, 45), place(to, 90, 900), up());
  }

  private static Optional<LapScrews> into(TimberBody stud, double reached) {
    return into(stud, reached, line -> true);
  }

  private static Optional<LapScrews> into(
      TimberBody stud, double reached, Predicate<ThroughLine> isFree) {
    return new EndScrews(5, reached, new Tape(LengthUnit.MM)).of(PLATE, stud, isFree);
  }

  /** In the middle of 500 to 545, on the mark 523, and 3 d = 15 from both sides of 90. */
  @Test
  void twoGoIntoTheMiddleOfTheEnd() {
    LapScrews screws = into(stud(500, 545), 0).orElseThrow();
    assertThat(screws.spots()).containsExactly(new FacePlace(523, 15), new FacePlace(523, 75));
    assertThat(screws.holds()).isTrue();
    assertThat(screws.asked().first()).isEqualTo(new LapScrews.Asked.FromEdges(15, 25));
    assertThat(screws.asked().apart()).isEqualTo(20);
  }

  /** From under the plate, up through its 45. */
  @Test
  void theyGoThroughThePlate() {
    LapScrews screws = into(stud(500, 545), 0).orElseThrow();
    assertThat(screws.lines())
        .containsExactly(
            new ThroughLine(place(523, 15, 0), up(), 45),
            new ThroughLine(place(523, 75, 0), up(), 45));
  }

  /**
   * At the plate's end 5 d = 25 of it and 15 before the stud's other side: from 25 to 30 on a stud
   * of 45, on the mark 28; a stud of 40 leaves 25, one of 39 nothing.
   */
  @Test
  void theyKeepOffTheEndOfWhatTheyGoThrough() {
    assertThat(into(stud(0, 45), 0).orElseThrow().spots().get(0).along()).isEqualTo(28);
    assertThat(into(stud(0, 40), 0).orElseThrow().spots().get(0).along()).isEqualTo(25);
    assertThat(into(stud(0, 39), 0)).isEmpty();
  }

  /**
   * Behind 25 of the sheets' screws and a diameter, 30; behind 50 they are 4 d = 20 apart still.
   */
  @Test
  void theyKeepBehindTheScrewsOfTheSheets() {
    assertThat(into(stud(500, 545), 25).orElseThrow().spots())
        .containsExactly(new FacePlace(523, 30), new FacePlace(523, 75));
    assertThat(into(stud(500, 545), 50)).isPresent();
    assertThat(into(stud(500, 545), 50.1)).isEmpty();
  }

  /** What does not stand on it takes none, nor what something else is in. */
  @Test
  void whatDoesNotMeetOrIsTakenHasNone() {
    assertThat(into(box("S", place(500, 0, 46), place(545, 90, 900), up()), 0)).isEmpty();
    assertThat(into(stud(1000, 1045), 0)).isEmpty();
    assertThat(into(stud(500, 545), 0, line -> line.from().y() > 20)).isEmpty();
  }
}
