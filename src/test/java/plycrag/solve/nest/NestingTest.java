package plycrag.solve.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.solve.guillotine.Cutting;
import plycrag.solve.guillotine.ExhaustiveCutting;
import plycrag.solve.guillotine.Item;
import plycrag.solve.guillotine.StockKind;
import plycrag.solve.nest.NestTask.Manner;
import plycrag.solve.nest.SheetCutting.SawCut;

class NestingTest {
  private static final double EXACT = 1e-6;
  private static final SheetKind SHEET = kind(2440, 1220, 100);
  private static final Manner AS_BUILT = new Manner(false, false);

  private static SheetKind kind(double length, double width, long price) {
    return new SheetKind(length, width, price, Integer.MAX_VALUE);
  }

  /** A trapezoid whose lower edge stands out by so much on either side; a triangle, a rectangle. */
  private static Polygon outline(double left, double width, double height, double in) {
    double top = Math.min(in, width);
    List<Coordinate> corners = new ArrayList<>();
    corners.add(new Coordinate(left, 300));
    corners.add(new Coordinate(left + width, 300));
    corners.add(new Coordinate(left + width, 300 + height));
    if (top < width) {
      corners.add(new Coordinate(left + top, 300 + height));
    }
    return Shapes.polygon(corners);
  }

  private static Arbitrary<Double> tenths(int least, int most) {
    return Arbitraries.integers().between(least * 10, most * 10).map(tenth -> tenth / 10.0);
  }

  private static Arbitrary<Blank> blank(int most) {
    return Combinators.combine(
            tenths(0, 5000),
            tenths(100, most),
            tenths(100, most / 2),
            Arbitraries.of(0.0, 0.0, 150.0, 4000.0),
            Arbitraries.of(true, false))
        .as(
            (left, width, height, in, across) ->
                new Blank(
                    "",
                    across ? outline(left, width, height, in) : outline(left, height, width, in),
                    across));
  }

  private static Arbitrary<NestTask> tasks(int most, int count) {
    return Combinators.combine(
            blank(most).list().ofMinSize(1).ofMaxSize(count),
            tenths(0, 12),
            Arbitraries.of(0.0, 0.0, 7.5),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false))
        .as(
            (blanks, gap, margin, turn, mirrored) ->
                new NestTask(
                    marked(blanks), List.of(SHEET), gap, margin, new Manner(turn, mirrored)));
  }

  private static List<Blank> marked(List<Blank> blanks) {
    return IntStream.range(0, blanks.size())
        .mapToObj(
            at ->
                new Blank("P" + (at + 1), blanks.get(at).outline(), blanks.get(at).lengthAcross()))
        .toList();
  }

  @Provide
  Arbitrary<NestTask> tasks() {
    return tasks(2440, 9);
  }

  @Provide
  Arbitrary<NestTask> smallTasks() {
    return tasks(2400, 4);
  }

  private static Blank named(NestTask task, String mark) {
    return task.blanks().stream()
        .filter(blank -> blank.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static Polygon laid(NestTask task, LaidBlank blank) {
    return blank.placement().of(named(task, blank.mark()).outline());
  }

  @Property(tries = 150)
  void everyBlankLiesOnceInsideAndApart(@ForAll("tasks") NestTask task) {
    List<String> marks = new ArrayList<>();
    for (StockSheet sheet : Nesting.of(task)) {
      List<Polygon> laid = new ArrayList<>();
      for (LaidBlank blank : sheet.blanks()) {
        marks.add(blank.mark());
        Polygon one = laid(task, blank);
        assertInside(one, sheet, sheet.blanks().size() == 1 ? 0 : task.margin());
        laid.forEach(
            other -> assertThat(one.distance(other)).isGreaterThanOrEqualTo(task.gap() - EXACT));
        laid.add(one);
      }
    }
    assertThat(marks)
        .containsExactlyInAnyOrderElementsOf(task.blanks().stream().map(Blank::mark).toList());
  }

  private static void assertInside(Polygon one, StockSheet sheet, double margin) {
    Envelope box = one.getEnvelopeInternal();
    assertThat(Math.min(box.getMinX(), box.getMinY())).isGreaterThanOrEqualTo(margin - EXACT);
    assertThat(box.getMaxX()).isLessThanOrEqualTo(sheet.width() - margin + EXACT);
    assertThat(box.getMaxY()).isLessThanOrEqualTo(sheet.height() - margin + EXACT);
  }

  /** Distances stay, and going round the corners turns the same way unless the back lies up. */
  @Property(tries = 100)
  void theMapIsRigidAndMirroredForTheBackAlone(@ForAll("tasks") NestTask task) {
    for (StockSheet sheet : Nesting.of(task)) {
      for (LaidBlank blank : sheet.blanks()) {
        Coordinate[] before = named(task, blank.mark()).outline().getCoordinates();
        Coordinate[] after = new Coordinate[before.length];
        for (int at = 0; at < before.length; at++) {
          after[at] = blank.placement().of(before[at]);
          assertThat(after[at].distance(after[0]))
              .isCloseTo(before[at].distance(before[0]), within(2e-3));
        }
        double turns = Math.signum(turn(before)) * Math.signum(turn(after));
        assertThat(turns).isEqualTo(task.manner().mirrored() ? -1 : 1);
      }
    }
  }

  private static Offset<Double> within(double most) {
    return Offset.offset(most);
  }

  private static double turn(Coordinate[] ring) {
    double twice = 0;
    for (int next = 1; next < ring.length; next++) {
      twice += ring[next - 1].x * ring[next].y - ring[next].x * ring[next - 1].y;
    }
    return twice;
  }

  /** The sheets' length runs along each blank as it is asked for, whatever the turns. */
  @Property(tries = 100)
  void theGrainIsKept(@ForAll("tasks") NestTask task) {
    for (StockSheet sheet : Nesting.of(task)) {
      for (LaidBlank blank : sheet.blanks()) {
        boolean quarter = blank.placement().turn().degrees() % 180 != 0;
        boolean lengthAlongU = sheet.upright() == quarter;
        assertThat(
                task.manner().mayTurn() || named(task, blank.mark()).lengthAcross() == lengthAlongU)
            .isTrue();
      }
    }
  }

  /** Rectangles round the blanks: pairs can only take fewer. */
  @Property(tries = 100)
  void smallTasksTakeNoMoreSheetsThanBruteForce(@ForAll("smallTasks") NestTask task) {
    List<Item> items = new ArrayList<>();
    int alone = 0;
    for (Blank blank : task.blanks()) {
      Envelope box = blank.outline().getEnvelopeInternal();
      double width = blank.lengthAcross() ? box.getWidth() : box.getHeight();
      double height = blank.lengthAcross() ? box.getHeight() : box.getWidth();
      boolean fits = width <= 2440 - 2 * task.margin() && height <= 1220 - 2 * task.margin();
      alone += fits ? 0 : 1;
      if (fits) {
        items.add(new Item(blank.mark(), width, height, task.manner().mayTurn()));
      }
    }
    List<StockKind> stock = List.of(new StockKind("sheet", 2440, 1220, 100, StockKind.UNLIMITED));
    Cutting cutting = new Cutting(task.gap(), task.margin());
    int least =
        items.isEmpty()
            ? 0
            : new ExhaustiveCutting(items, stock, cutting).best().orElseThrow().sheets();
    assertThat(Nesting.of(task)).hasSizeLessThanOrEqualTo(least + alone);
  }

  /** Every cut runs across sheet that no blank's rectangle needs. */
  @Property(tries = 100)
  void noCutRunsThroughABlank(@ForAll("tasks") NestTask task) {
    for (StockSheet sheet : Nesting.of(task)) {
      for (LaidBlank blank : sheet.blanks()) {
        Envelope box = laid(task, blank).getEnvelopeInternal();
        for (SawCut cut : sheet.cutting().cuts()) {
          double low = cut.upright() ? box.getMinX() : box.getMinY();
          double high = cut.upright() ? box.getMaxX() : box.getMaxY();
          double from = cut.upright() ? box.getMinY() : box.getMinX();
          double to = cut.upright() ? box.getMaxY() : box.getMaxX();
          boolean beside = to <= cut.from() + EXACT || from >= cut.to() - EXACT;
          boolean clear = high <= cut.at() + EXACT || low >= cut.at() - EXACT;
          assertThat(beside || clear).as(cut + " through " + box).isTrue();
        }
      }
    }
  }

  private static Blank rectangle(String mark, double width, double height) {
    return new Blank(mark, outline(0, width, height, 0), true);
  }

  private static List<StockSheet> nested(List<Blank> blanks, List<SheetKind> kinds) {
    return Nesting.of(new NestTask(blanks, kinds, 3, 0, AS_BUILT));
  }

  /** Two right triangles of 2400 by 1200 make 2400 by 1200 and a kerf on the slope. */
  @Test
  void trianglesArePairedWhereThatSavesASheet() {
    Blank one = new Blank("P1", outline(0, 2390, 1200, 2390), true);
    Blank two = new Blank("P2", outline(2500, 2390, 1200, 2390), true);
    assertThat(nested(List.of(one, two), List.of(SHEET))).hasSize(1);
    List<Blank> turned = List.of(new Blank("P1", one.outline(), true), two);
    assertThat(nested(turned, List.of(SHEET)).get(0).blanks())
        .extracting(blank -> blank.placement().turn())
        .containsExactly(Turn.NONE, Turn.HALF);
  }

  @Test
  void whatNeedsTheWholeSheetStaysWhole() {
    List<StockSheet> sheets =
        Nesting.of(
            new NestTask(
                List.of(rectangle("P1", 2440, 1220), rectangle("P2", 500, 500)),
                List.of(SHEET),
                3,
                10,
                AS_BUILT));
    assertThat(sheets).hasSize(2);
    assertThat(sheets.get(0).blanks().get(0).placement().of(new Coordinate(0, 300)))
        .isEqualTo(new Coordinate(0, 0));
    assertThat(sheets.get(0).cutting().cuts()).isEmpty();
    assertThat(sheets.get(1).cutting().cuts()).hasSize(6);
  }

  @Test
  void whatIsAtHandIsUsedFirstThenWhatCostsLeast() {
    SheetKind remnant = new SheetKind(900, 700, 0, 1);
    SheetKind half = kind(1220, 1220, 60);
    List<Blank> blanks =
        List.of(rectangle("P1", 800, 600), rectangle("P2", 800, 700), rectangle("P3", 2000, 900));
    List<StockSheet> sheets = nested(blanks, List.of(SHEET, remnant, half));
    assertThat(sheets).extracting(StockSheet::kind).containsExactlyInAnyOrder(remnant, half, SHEET);
    List<StockSheet> two = nested(blanks.subList(0, 2), List.of(SHEET, remnant, half));
    assertThat(two).extracting(StockSheet::kind).containsExactlyInAnyOrder(remnant, half);
  }

  @Test
  void sheetsOfTheSameSizesAreLaidTheSame() {
    List<Blank> blanks = new ArrayList<>();
    for (int at = 1; at <= 6; at++) {
      blanks.add(rectangle("P" + at, at % 2 == 0 ? 1500 : 900, 1100));
    }
    List<StockSheet> sheets = nested(blanks, List.of(SHEET));
    assertThat(sheets).hasSize(3);
    assertThat(sheets.stream().map(StockSheet::cutting).distinct()).hasSize(1);
  }
}
