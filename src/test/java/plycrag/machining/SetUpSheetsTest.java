package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;
import plycrag.check.ApprovedLayout;
import plycrag.document.Book;
import plycrag.document.Cell;
import plycrag.document.Move;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.drawing.WordsApart;
import plycrag.layout.sheets.LaidSheet;
import plycrag.wall.machine.MachineLimits;
import plycrag.wall.machine.SpeedRange;

class SetUpSheetsTest {
  private static final String WALL =
      """
      [wall]
      name = "Bay"
      [[facet]]
      width = 1200
      length = 1200
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 250]
      """;

  private static final MachineLimits LIMITS =
      new MachineLimits(
          new MachineLimits.Travel(Optional.empty(), Optional.empty(), Optional.empty()),
          6000,
          100,
          new SpeedRange(100, 60_000),
          MachineLimits.LongSide.AS_BUILT);

  private static List<SetUpSheets.SetUp> sheets(String toml) {
    ApprovedLayout approved = (ApprovedLayout) Walls.judged(toml);
    return SetUpSheets.of(
        approved,
        DrillPrograms.of(approved).stream()
            .map(
                program ->
                    new ProgramFile(
                        program, program.sheet() + ".ngc", "0123456789abcdef".repeat(4)))
            .toList());
  }

  private static String words(Book page) {
    StringBuilder words = new StringBuilder(page.title() + "\n" + page.subtitle() + "\n");
    for (Book.Section section : page.sections()) {
      for (Book.Block block : section.blocks()) {
        if (block instanceof Book.Listing listing) {
          listing
              .table()
              .rows()
              .forEach(
                  row ->
                      words
                          .append(String.join(" | ", row.stream().map(Cell::text).toList()))
                          .append('\n'));
        } else if (block instanceof Book.Caution caution) {
          words.append(caution.word()).append('\n');
        }
      }
    }
    return words.toString();
  }

  /** The four holes of a sheet, and 200 by 150 mm: a diagonal of 250 (Pythagoras). */
  @Test
  void tellsAllThatIsSetUp() {
    assertThat(words(sheets(WALL).get(0).page()))
        .contains(
            "Bay: sheet S1\nSet-up sheet for the router, front face up, revision ",
            "Sheet | S1, with P1 of main",
            "Sheets like it | none: this one alone",
            "Size | 2440 × 1220 × 18 mm thick, measured",
            "X0 Y0 | lower left corner of the sheet",
            "Z0 | on the board under the sheet",
            "1 of 1 | S1.ngc | Tool T1, drill, diameter 12 | 4000 | 4 | 1\n",
            "S1.ngc | 100 to 300 | 100 to 250 | -0.5\n",
            "S1.ngc | 01234567 89abcdef 01234567",
            "upper left corner | lower right corner | 2728 | ",
            "left edge | A | 100 | ",
            "lower edge | B | 100 | ",
            "left edge | C | 100 | ",
            "A | D | 250 | ",
            "B | C | 250 | ",
            "C | hole main 10/25 | 100 | 250\n",
            "nothing above 15 mm inside X 100 to 300, Y 100 to 250: ",
            "Dust.",
            "Eyes and ears.",
            "Work holding.",
            "Dry run.");
  }

  /** 18 mm of sheet, 0.5 mm into the board, a clamp of 20 mm: 38.5 mm, and whole ones of them. */
  @Test
  void theDryRunIsToldByANumberAndLengthsInTheMachinesUnit() {
    String clamp =
        "[[keep-out]]\nname = \"clamp\"\nleft = 900\nlow = 0\nwidth = 9\nheight = 9\nrise = 20\n";
    ApprovedLayout approved = (ApprovedLayout) Walls.judged(WALL + clamp);
    assertThat(DrillPrograms.of(approved).get(0).remarks())
        .contains("Caution: run above the work first, with Z zero raised by 39");
    assertThat(dryRun(WALL + clamp)).contains("raised by 39 mm:");
    String inches = WALL + clamp + "[machine]\nprogram-unit = \"in\"\n";
    assertThat(dryRun(inches)).contains("raised by 1.6 in:");
    assertThat(words(sheets(inches).get(0).page()))
        .contains("Size | 96.06 × 48.03 × 0.71 in thick");
  }

  /** Until it is told how slowly the spindle turns, 4000 rpm may be more than it can. */
  @Test
  void aSpindleThatMayNotTurnSoSlowlyIsTold() {
    assertThat(words(sheets(WALL).get(0).page())).contains("Spindle.\n");
    assertThat(words(sheets(WALL + "[machine]\nleast-speed = 3000\n").get(0).page()))
        .doesNotContain("Spindle.\n");
    assertThat(words(sheets(WALL + "[machine]\nspindle-speed = 9000\n").get(0).page()))
        .doesNotContain("Spindle.\n");
  }

  private static String dryRun(String toml) {
    List<Book.Section> sections = sheets(toml).get(0).page().sections();
    return sections.get(sections.size() - 1).blocks().stream()
        .filter(Book.Caution.class::isInstance)
        .map(block -> (Book.Caution) block)
        .filter(caution -> caution.word().equals("Dry run."))
        .map(Book.Caution::text)
        .findFirst()
        .orElseThrow();
  }

  /**
   * 3 mm over the length of a sheet: the readings of A and B differ by as much as they are apart.
   */
  @Test
  void aSheetOutOfSquareReadsOtherwise() {
    LaidSheet sheet = Walls.laidOut(WALL).sheets().get(0);
    double[] diagonals =
        CheckMeasures.before(sheet).stream()
            .skip(4)
            .mapToDouble(CheckMeasures.Measure::distance)
            .toArray();
    double width = sheet.stock().width();
    double height = sheet.stock().height();
    double longer = Math.hypot(width, height + 3);
    double shorter = Math.hypot(width, height - 3);
    assertThat(diagonals[0]).isEqualTo(diagonals[1]).isBetween(shorter, longer);
    assertThat(longer - shorter).isGreaterThan(2);
  }

  @Test
  void namesTheSheetsThatAreWorkedAlike() {
    String twice =
        """
        [[facet]]
        width = 2440
        length = 2442
        [inserts]
        pattern = "lines"
        columns = [110]
        rows = [100, 1322]
        """;
    assertThat(words(sheets(twice).get(0).page()))
        .contains("Sheets like it | S2: laid, drilled and cut the same");
  }

  @Test
  void thePictureShowsHolesTourAndZero() {
    Book.Figure figure = (Book.Figure) sheets(WALL).get(0).page().sections().get(0).blocks().get(0);
    List<Shape> shapes = figure.drawing().shapes();
    assertThat(shapes.stream().filter(Shape.Circle.class::isInstance)).hasSize(4);
    assertThat(shapes)
        .filteredOn(Shape.Path.class::isInstance)
        .singleElement()
        .satisfies(
            path ->
                assertThat(((Shape.Path) path).points())
                    .containsExactlyInAnyOrder(
                        new Xy(0, 0),
                        new Xy(100, 100),
                        new Xy(300, 100),
                        new Xy(100, 250),
                        new Xy(300, 250)));
    assertThat(shapes)
        .filteredOn(Shape.Area.class::isInstance)
        .singleElement()
        .satisfies(area -> assertThat(((Shape.Area) area).vertices()).contains(new Xy(0, 0)));
  }

  /**
   * At 100 mm/s and 100 mm/s²: it takes 1 s and 50 mm to come to speed. So 300 mm take 2 s and 2 s,
   * and 25 mm, never at speed, 2 √(25/100) = 1 s (uniform acceleration, any textbook).
   */
  @Test
  void theTimeCountsSpeedingUpAndStopping() {
    List<Move> moves =
        List.of(
            new Move.RapidZ(25), new Move.Dwell(3), new Move.RapidXy(300, 0), new Move.RapidZ(0));
    assertThat(RunTime.of(moves, LIMITS)).isCloseTo(3 + 4 + 1, within(1e-9));
  }

  /** Half a turn about a radius of 100/π mm is 100 mm long. */
  @Test
  void theTimeOfAnArcIsThatOfItsLength() {
    double radius = 100 / Math.PI;
    List<Move> moves =
        List.of(
            new Move.RapidZ(0),
            new Move.Arc(new Xyz(2 * radius, 0, 0), new Xy(radius, 0), true, 6000));
    assertThat(RunTime.of(moves, LIMITS)).isCloseTo(1 + 1, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lower-left", "lower-right", "upper-left", "upper-right"})
  void wordsOfThePictureLieApart(String origin) {
    String upright = "[sheet]\nlength = 1220\nwidth = 600\nlay = \"up\"\n";
    String toml = WALL + upright + "[machine]\norigin = \"" + origin + "\"\n";
    for (SetUpSheets.SetUp sheet : sheets(toml)) {
      Book.Figure figure = (Book.Figure) sheet.page().sections().get(0).blocks().get(0);
      WordsApart.check(figure.drawing());
      WordsApart.checkLines(figure.drawing());
    }
  }
}
