package plycrag.files.ngc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.files.Specimens;
import plycrag.files.ngc.Dialect.Comments;
import plycrag.files.ngc.Dialect.Look;
import plycrag.files.ngc.Dialect.Words;
import plycrag.units.LengthUnit;

/** Words by NISTIR 6556, "The NIST RS274NGC Interpreter", chapter 3, except where said. */
class DialectTest {
  private static final Words PLAIN_WORDS = new Words(false, false, false, false);
  private static final Look PLAIN_LOOK = new Look(Comments.PARENTHESES, false, 72);
  private static final Move FIRST = new Move.DrillCycle(new Xy(1, 2), 23, -0.5, 0, 600);
  private static final Move SECOND = new Move.DrillCycle(new Xy(30, 2), 23, -0.5, 0, 600);
  private static final Move DEEP = new Move.DrillCycle(new Xy(30, 40), 23, -0.5, 8, 600);

  private static final Dialect CANNED = words(new Words(true, false, false, false));

  private static Dialect words(Words words) {
    return new Dialect(words, PLAIN_LOOK, LengthUnit.MM, 3);
  }

  private static Dialect look(Look look) {
    return new Dialect(PLAIN_WORDS, look, LengthUnit.MM, 3);
  }

  private static DrillProgram program(Move... between) {
    List<Move> moves = new ArrayList<>();
    moves.addAll(List.of(new Move.RapidZ(43), new Move.SpindleOn(18_000), new Move.Dwell(3)));
    moves.addAll(List.of(between));
    moves.addAll(List.of(new Move.RapidZ(43), new Move.SpindleOff()));
    return new DrillProgram("S1", "front", 1, List.of("Bay"), moves, List.of());
  }

  private static String text(Dialect dialect, Move... between) {
    return NgcWriter.write(program(between), dialect);
  }

  @Test
  void aSeriesOfHolesIsOneCycleWithTheirPlaces() {
    assertThat(text(CANNED, FIRST, SECOND))
        .contains("G4 P3\nG99 G81 X1. Y2. Z-0.5 R23. F600.\nX30. Y2.\nG80\nG0 Z43.\nM5\n");
  }

  @Test
  void anotherCycleIsToldAnew() {
    assertThat(text(CANNED, SECOND, DEEP))
        .contains("F600.\nG80\nG99 G83 X30. Y40. Z-0.5 R23. Q8. F600.\nG80\n");
  }

  @Test
  void withoutCyclesAHoleIsItsMoves() {
    assertThat(text(Specimens.PLAIN, FIRST, SECOND))
        .contains(
            "G0 X1. Y2.\nG0 Z23.\nG1 Z-0.5 F600.\nG0 Z23.\nG0 X30. Y2.\nG1 Z-0.5 F600.\nG0 Z23.\n");
  }

  /** From 23 down by 8 each time, up again to clear, back to half a millimetre above. */
  @Test
  void peckingComesOutForItsChips() {
    assertThat(text(Specimens.PLAIN, DEEP))
        .contains(
            """
            G0 X30. Y40.
            G0 Z23.
            G1 Z15. F600.
            G0 Z23.
            G0 Z15.5
            G1 Z7. F600.
            G0 Z23.
            G0 Z7.5
            G1 Z-0.5 F600.
            G0 Z23.
            """);
  }

  @Test
  void waitsCountWhatTheControllerCounts() {
    assertThat(text(words(new Words(false, false, false, true)))).contains("G4 P3000\n");
  }

  @Test
  void toolsAreChangedByWordOrByHand() {
    Move[] change = {new Move.RapidZ(43), new Move.ToolChange(2, "Tool T2, end mill")};
    List<Move> moves = new ArrayList<>(List.of(change));
    moves.add(new Move.RapidZ(43));
    DrillProgram program = new DrillProgram("S1", "front", 1, List.of(), moves, List.of());
    assertThat(NgcWriter.write(program, words(new Words(false, true, false, false))))
        .contains("(TOOL T2 END MILL)\nT2 M6\nG0 Z43.\n");
    assertThat(NgcWriter.write(program, Specimens.PLAIN))
        .contains("(TOOL T2 END MILL)\nM0\nG0 Z43.\n");
  }

  @Test
  void afterAChangeTheToolIsRaisedFirst() {
    Move change = new Move.ToolChange(2, "T2");
    assertThatThrownBy(
            () ->
                NgcWriter.write(
                    new DrillProgram(
                        "S1",
                        "front",
                        1,
                        List.of(),
                        List.of(new Move.RapidZ(43), change, new Move.RapidXy(0, 0)),
                        List.of()),
                    Specimens.PLAIN))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("first motion");
    assertThatThrownBy(() -> text(Specimens.PLAIN, change)).hasMessageContaining("while it turns");
  }

  @Test
  void commentsStandInParenthesesAfterASemicolonOrNowhere() {
    assertThat(text(look(new Look(Comments.SEMICOLON, false, 72)))).startsWith("; BAY\nG21 ");
    assertThat(text(look(new Look(Comments.NONE, false, 72)))).startsWith("G21 ");
  }

  @Test
  void linesOfCodeAreNumberedAndRemarksAreNot() {
    assertThat(text(look(new Look(Comments.PARENTHESES, true, 72))))
        .startsWith("(BAY)\nN1 G21 G90 G94 G17 G54\nN2 G0 Z43.\n")
        .endsWith("\nN7 M2\n");
  }

  @Test
  void remarksKeepToTheGreatestLength() {
    DrillProgram program =
        new DrillProgram("S1", "front", 1, List.of("word ".repeat(90)), List.of(), List.of());
    for (Comments comments : List.of(Comments.PARENTHESES, Comments.SEMICOLON)) {
      String text = NgcWriter.write(program, look(new Look(comments, true, 120)));
      assertThat(text.lines()).allMatch(line -> line.length() <= 120);
      assertThat(text.lines().mapToInt(String::length).max().orElseThrow()).isGreaterThan(100);
    }
  }

  /** Twenty-five millimetres and a tenth are 0.9882 in (25.4 mm: NIST SP 811). */
  @Test
  void inchesAreInches() {
    Dialect inches = new Dialect(PLAIN_WORDS, PLAIN_LOOK, LengthUnit.IN, 4);
    assertThat(text(inches, new Move.DrillCycle(new Xy(25.1, 254), 25.4, -12.7, 0, 635)))
        .contains("G20 G90", "G0 X0.9882 Y10.\nG0 Z1.\nG1 Z-0.5 F25.\n", "M3 S18000", "G4 P3\n");
  }

  @Test
  void cutsTellOnlyTheHeightThatChangesAndArcsTheirCentreFromWhereTheyBegin() {
    String text =
        text(
            Specimens.PLAIN,
            new Move.RapidXy(10, 10),
            new Move.RapidZ(20),
            new Move.Cut(new Xyz(14, 10, 18), 900),
            new Move.Cut(new Xyz(14, 12, 18), 900),
            new Move.Arc(new Xyz(6, 12, 17), new Xy(10, 12), false, 900),
            new Move.Arc(new Xyz(14, 12, 17), new Xy(10, 12), true, 900));
    assertThat(text)
        .contains(
            """
            G1 X14. Y10. Z18. F900.
            G1 X14. Y12. F900.
            G3 X6. Y12. Z17. I-4. J0. F900.
            G2 X14. Y12. I4. J0. F900.
            """);
  }

  /** The longest line there can be, numbered, with four digits: its feed stands before it. */
  @Test
  void aFeedThatNoLongerFitsStandsAlone() {
    Dialect tight =
        new Dialect(PLAIN_WORDS, new Look(Comments.PARENTHESES, true, 70), LengthUnit.MM, 4);
    double far = -1234.5678;
    String text =
        text(
            tight,
            new Move.RapidXy(far, far),
            new Move.Arc(
                new Xyz(far, far, -112.3456), new Xy(-1358.0245, -1358.0245), true, 12345.25),
            new Move.RapidZ(43));
    assertThat(text)
        .contains(
            "\nN6 F12345.25\nN7 G2 X-1234.5678 Y-1234.5678 Z-112.3456 I-123.4567 J-123.4567\n");
    assertThat(text.lines()).allMatch(line -> line.length() <= 70);
  }

  @Test
  void refusesToCutWithoutSpindlePlaceOrFeed() {
    Move cut = new Move.Cut(new Xyz(5, 5, 17), 900);
    refuses("a place is reached", program(cut));
    refuses("without feed", program(new Move.RapidXy(0, 0), new Move.Cut(new Xyz(5, 5, 17), 0)));
    refuses(
        "turns at speed",
        new DrillProgram(
            "S1",
            "front",
            1,
            List.of(),
            List.of(new Move.RapidZ(43), new Move.RapidXy(0, 0), cut),
            List.of()));
    refuses(
        "out of its hole",
        program(new Move.RapidXy(0, 0), cut, new Move.RapidZ(20), new Move.RapidXy(0, 0)));
    refuses("below the bottom", program(new Move.RapidXy(0, 0), cut, new Move.RapidZ(10)));
  }

  private static void refuses(String why, DrillProgram program) {
    assertThatThrownBy(() -> NgcWriter.write(program, Specimens.PLAIN))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(why);
  }
}
