package plycrag.files.ngc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.files.Specimens;

class NgcWriterTest {
  private static final List<Move> START =
      List.of(new Move.RapidZ(20), new Move.SpindleOn(18_000), new Move.Dwell(3));
  private static final List<Move> END = List.of(new Move.RapidZ(20), new Move.SpindleOff());

  /** Words and their order: the contract of programs; from memory of the RS274/NGC report. */
  @Test
  void writesPlainLines() {
    assertThat(NgcWriter.write(Specimens.twoHoles(), Specimens.PLAIN))
        .isEqualTo(
            """
            (SHEET S1 FRONT : SEANCE WALL)
            (Z0 SHEET TOP)
            (T1 DRILL 12.0 MM)
            G21 G90 G94 G17 G54
            G0 Z25.
            M3 S16000
            G4 P4
            G0 X200. Y300.25
            G0 Z5.
            G1 Z-18.5 F900.
            G0 Z5.
            G0 X1000.5 Y300.25
            G1 Z-18.5 F900.
            G0 Z25.
            M5
            M2
            """);
  }

  @Test
  void anIndependentReaderFindsTheHoles() {
    NgcReader reader = NgcReader.read(NgcWriter.write(Specimens.twoHoles(), Specimens.PLAIN));
    assertThat(reader.holes())
        .containsExactly(
            new NgcReader.Hole(200, 300.25, -18.5), new NgcReader.Hole(1000.5, 300.25, -18.5));
    assertThat(reader.travelHeights()).containsExactly(25.0, 5.0);
  }

  @Property(tries = 200)
  void everyPlaceComesBackToHalfAMicrometre(
      @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = -3000, max = 3000) Double> places) {
    List<Move> moves = new ArrayList<>();
    places.forEach(
        place -> {
          moves.add(new Move.RapidXy(place, -place));
          moves.add(new Move.Plunge(-18, 600));
          moves.add(new Move.RapidZ(20));
        });
    List<NgcReader.Hole> holes =
        NgcReader.read(NgcWriter.write(program(moves), Specimens.PLAIN)).holes();
    assertThat(holes).hasSameSizeAs(places);
    for (int i = 0; i < holes.size(); i++) {
      assertThat(holes.get(i).x()).isCloseTo(places.get(i), within());
      assertThat(holes.get(i).y()).isCloseTo(-places.get(i), within());
    }
  }

  @Property(tries = 500)
  void noRemarkBreaksAProgram(@ForAll String remark) {
    DrillProgram program =
        new DrillProgram("S1", "front", 1, List.of(remark), List.of(), List.of());
    assertThat(NgcReader.read(NgcWriter.write(program, Specimens.PLAIN)).comments())
        .allMatch(comment -> comment.matches("[A-Z0.-9 ._/:-]+"));
  }

  @Test
  void remarksStayReadable() {
    assertThat(comments("Höhle 3 × 2; −5 (left) #1=2 50%"))
        .containsExactly("HOHLE 3 X 2 -5 LEFT 1 2 50");
  }

  /** LinuxCNC manual, G-code overview: comments that begin so are obeyed. */
  @Test
  void commentsThatSomeControllersObeyAreDisarmed() {
    assertThat(comments("probeopen a.txt")).containsExactly("- PROBEOPEN A.TXT");
    assertThat(comments("logclose")).containsExactly("- LOGCLOSE");
    assertThat(comments("MSG, hello")).containsExactly("MSG HELLO");
  }

  @Test
  void longRemarksAreWrappedBetweenWords() {
    List<String> comments = comments("word ".repeat(30) + "x".repeat(100));
    assertThat(comments).hasSizeGreaterThan(3).allMatch(comment -> comment.length() <= 70);
    assertThat(String.join(" ", comments)).startsWith("WORD ".repeat(30).strip());
    assertThat(comments.get(0)).endsWith("WORD");
  }

  @Test
  void peckingIsSafe() {
    List<Move> moves =
        List.of(
            new Move.RapidXy(1, 2),
            new Move.Plunge(-5, 600),
            new Move.RapidZ(20),
            new Move.RapidZ(-4),
            new Move.Plunge(-10, 600),
            new Move.RapidZ(20));
    assertThat(NgcWriter.write(program(moves), Specimens.PLAIN))
        .contains("G0 Z-4.\nG1 Z-10. F600.\n");
  }

  @Test
  void refusesToMoveAcrossFirst() {
    refuses(
        "first motion",
        new DrillProgram("S1", "front", 1, List.of(), List.of(new Move.RapidXy(0, 0)), List.of()));
  }

  @Test
  void refusesToPlungeBeforeTheSpindleIsAtSpeed() {
    Move across = new Move.RapidXy(0, 0);
    Move plunge = new Move.Plunge(-1, 600);
    Move raise = new Move.RapidZ(20);
    Move turn = new Move.SpindleOn(18_000);
    refuses("turns at speed", bare(raise, across, plunge));
    refuses("turns at speed", bare(raise, turn, across, plunge));
    refuses("turns at speed", bare(raise, new Move.Dwell(3), turn, across, plunge));
    refuses("a place is reached", bare(raise, turn, new Move.Dwell(3), plunge));
  }

  @Test
  void refusesToTravelInsideAHole() {
    Move plunge = new Move.Plunge(-1, 600);
    Move across = new Move.RapidXy(9, 9);
    refuses("out of its hole", program(List.of(across, plunge, across)));
    refuses("out of its hole", program(List.of(across, plunge, new Move.RapidZ(5), across)));
    refuses("below the bottom", program(List.of(across, plunge, new Move.RapidZ(-2))));
    refuses("in a hole", program(List.of(across, plunge, new Move.SpindleOff())));
  }

  @Test
  void refusesToEndTurningOrDown() {
    refuses("turns at the end", bare(new Move.RapidZ(20), new Move.SpindleOn(1000)));
    List<Move> moves = new ArrayList<>(START);
    moves.addAll(List.of(new Move.RapidXy(9, 9), new Move.Plunge(-5, 600)));
    moves.addAll(END);
    moves.add(new Move.RapidZ(0));
    refuses("down at the end", new DrillProgram("S1", "front", 1, List.of(), moves, List.of()));
  }

  @Test
  void refusesAPlungeThatIsNone() {
    Move across = new Move.RapidXy(9, 9);
    refuses("does not go down", program(List.of(across, new Move.Plunge(20, 600))));
    refuses("without feed", program(List.of(across, new Move.Plunge(-1, 0))));
    refuses("feed or speed", program(List.of(across, new Move.Plunge(-1, 0.0001))));
  }

  private static void refuses(String why, DrillProgram program) {
    assertThatThrownBy(() -> NgcWriter.write(program, Specimens.PLAIN))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(why);
  }

  private static DrillProgram program(List<Move> between) {
    List<Move> moves = new ArrayList<>(START);
    moves.addAll(between);
    moves.addAll(END);
    return new DrillProgram("S1", "front", 1, List.of(), moves, List.of());
  }

  private static DrillProgram bare(Move... moves) {
    return new DrillProgram("S1", "front", 1, List.of(), List.of(moves), List.of());
  }

  private static List<String> comments(String remark) {
    DrillProgram program =
        new DrillProgram("S1", "front", 1, List.of(remark), List.of(), List.of());
    return NgcReader.read(NgcWriter.write(program, Specimens.PLAIN)).comments();
  }

  private static Offset<Double> within() {
    return Offset.offset(0.000501);
  }
}
