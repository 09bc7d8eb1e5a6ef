package plycrag.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.document.Shape;
import plycrag.drawing.WordsApart;
import plycrag.drawing.pen.PrintedSet;
import plycrag.drawing.pen.View;
import plycrag.drawing.pen.ViewKind;
import plycrag.drawing.room.PlanView;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.standing.SheetDatum;
import plycrag.wall.LayerNames;
import plycrag.wall.Output;
import plycrag.wall.Output.DxfVersion;
import plycrag.wall.Output.Paper;
import plycrag.wall.Output.TemplatePaper;

class TemplatesTest {
  private static final CheckedLayout UNEVEN = sample("river-bay");
  private static final CheckedLayout OFFSET = sample("oar-loft");

  private static CheckedLayout sample(String name) {
    return TestFiles.samples().stream()
        .filter(file -> file.endsWith(name + ".toml"))
        .map(file -> Walls.judged(dropping(TestFiles.read(file))))
        .findFirst()
        .orElseThrow();
  }

  /** Lines stay where the pattern has them. */
  private static String dropping(String toml) {
    return toml.replace("[inserts]", "[inserts]\nwhen-blocked = \"drop\"");
  }

  private static Output output(TemplatePaper paper, Output.Templates when) {
    return new Output(DxfVersion.R2000, Paper.A4, paper, when, LayerNames.usual(), false);
  }

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  private static Stream<Shape.Circle> circles(Drawing drawing, double diameter) {
    return drawing.shapes().stream()
        .filter(Shape.Circle.class::isInstance)
        .map(Shape.Circle.class::cast)
        .filter(circle -> circle.radius() == diameter / 2);
  }

  /** 150 mm between rows is even, 163 and 162 between columns is not. */
  @Test
  void evenRowsGetAJigSharedOnesRodsAndOthersPaper() {
    Output auto = output(TemplatePaper.A4, Output.Templates.AUTO);
    assertThat(Templates.of(UNEVEN, auto))
        .extracting(Templates.Template::name)
        .containsExactly("rods-s1", "rods-s2");
    assertThat(Templates.of(OFFSET, auto))
        .extracting(Templates.Template::name)
        .containsExactly("jig-s1", "jig-s2");
    Output paper = output(TemplatePaper.A4, Output.Templates.SHEETS);
    assertThat(Templates.of(OFFSET, paper))
        .extracting(Templates.Template::name)
        .containsExactly("sheet-S1", "sheet-S2");
  }

  /** An offset grid of 8 in starts its rows at two places, 4 in apart. */
  @Test
  void theJigOfAnOffsetGridHasTwoStops() {
    LaidSheet sheet = OFFSET.layout().sheets().get(0);
    JigPlan plan = JigPlan.of(sheet, SheetDatum.of(OFFSET.layout(), sheet)).orElseThrow();
    assertThat(plan.pitch()).isEqualTo(203.2);
    assertThat(plan.stops()).containsExactly(101.6, 203.2);
  }

  /**
   * By hand: the lower left of four sheets as bought meets seams on its right and above. A hole at
   * (680, 100) is 2440 - 680 = 1760 mm from its right edge and 1220 - 100 = 1120 from its upper
   * one.
   */
  @Test
  void sheetsAsBoughtAreReadFromTheirSeams() {
    CheckedLayout four =
        Walls.judged(
            """
            [[facet]]
            width = 4882
            length = 2442
            [sheet]
            lay = "across"
            edges = "as-bought"
            [inserts]
            pattern = "lines"
            columns = [200, 440, 680]
            rows = [100]
            when-blocked = "report"
            """);
    Output paper = output(TemplatePaper.A4, Output.Templates.SHEETS);
    assertThat(words(Templates.of(four, paper).get(0).drawing()))
        .contains("1760 / 1120", "2000 / 1120", "2240 / 1120")
        .anyMatch(line -> line.contains("the sheet's upper right, where it meets a seam"));
    Output auto = output(TemplatePaper.A4, Output.Templates.AUTO);
    assertThat(words(Templates.of(four, auto).get(0).drawing()))
        .anyMatch(line -> line.contains("its right edge 1760 mm left of the first hole"))
        .anyMatch(line -> line.contains("the sheet's right edge, the strip turned end for end"));
  }

  @Test
  void theJigSaysHowItIsUsed() {
    Output auto = output(TemplatePaper.LETTER, Output.Templates.AUTO);
    List<String> words = words(Templates.of(OFFSET, auto).get(0).drawing());
    assertThat(words)
        .anyMatch(line -> line.contains("trial hole"))
        .anyMatch(line -> line.contains("backing board"))
        .anyMatch(line -> line.contains("cleat"))
        .anyMatch(line -> line.contains("bit"));
  }

  @ParameterizedTest
  @EnumSource
  void everyHoleOfTheSheetIsOnATile(TemplatePaper paper) {
    Output output = output(paper, Output.Templates.SHEETS);
    List<Templates.Template> templates = Templates.of(UNEVEN, output);
    List<String> shown = new ArrayList<>();
    for (Print.Page page : templates.get(0).print().pages()) {
      Drawing drawing = page.drawings().get(0).drawing();
      circles(drawing, 12).forEach(one -> shown.add(one.centre().x() + " " + one.centre().y()));
    }
    assertThat(shown)
        .containsAll(
            UNEVEN.layout().sheets().get(0).holes().stream().map(hole -> place(hole)).toList());
  }

  private static String place(MachinedHole hole) {
    return hole.spot().x() + " " + hole.spot().y();
  }

  /** The paper's own sizes: ISO 216, and 8.5 x 11 in. */
  @Test
  void tilesAreAsLargeAsThePaperAndSayHowToMeasureIt() {
    Print print =
        Templates.of(UNEVEN, output(TemplatePaper.LETTER, Output.Templates.SHEETS)).get(0).print();
    assertThat(print.pages()).allMatch(page -> page.width() * page.height() == 215.9 * 279.4);
    assertThat(
            print.pages().get(0).drawings().stream().flatMap(one -> words(one.drawing()).stream()))
        .contains("100 mm", "4 in", "Print at 100 %, not fitted to the page.");
  }

  /** Two walls drilled alike, one file. */
  @Test
  void sheetsThatAreDrilledAlikeShareATemplate() {
    CheckedLayout pair =
        Walls.judged(
            """
            [wall]
            width = 2440
            [[facet]]
            length = 2440
            [sheet]
            lay = "up"
            seam-gap = 0
            [inserts]
            when-blocked = "report"
            pattern = "lines"
            columns = [100, 263, 425, 1320, 1483, 1645]
            rows = [200, 400]
            """);
    Output output = output(TemplatePaper.A4, Output.Templates.SHEETS);
    List<Templates.Template> templates = Templates.of(pair, output);
    assertThat(pair.layout().sheets()).hasSize(2);
    assertThat(templates).hasSize(1);
    assertThat(words(templates.get(0).drawing())).anyMatch(line -> line.contains("S1, S2"));
  }

  static List<Path> samples() {
    return TestFiles.samples();
  }

  /** Jigs, maps and tiles of all samples, as they are printed. */
  @ParameterizedTest
  @MethodSource("samples")
  void wordsOfPrintedTemplatesLieApartAndOffLines(Path sample) {
    Output auto = output(TemplatePaper.A4, Output.Templates.AUTO);
    for (Templates.Template template : Templates.of(Walls.judged(sample), auto)) {
      for (Print.Page page : template.print().pages()) {
        for (Print.Placed placed : page.drawings()) {
          WordsApart.check(placed.drawing());
          WordsApart.checkLines(placed.drawing());
        }
      }
    }
  }

  /** The frame and title block of every page of the drawings, of a long name. */
  @Test
  void wordsOfATitleBlockLieApartAndOffLines() {
    Drawing drawing = PlanView.of(UNEVEN);
    String name = "sheet-of-a-wall-with-a-long-name";
    View view = new View(ViewKind.FRAME, name, "", () -> drawing);
    for (Paper paper : Paper.values()) {
      for (Print.Page page : PrintedSet.of(UNEVEN, paper, List.of(view)).pages()) {
        page.drawings().forEach(placed -> WordsApart.check(placed.drawing()));
        page.drawings().forEach(placed -> WordsApart.checkLines(placed.drawing()));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void noWordsOfATileLieOnOthers(TemplatePaper paper) {
    Output output = output(paper, Output.Templates.SHEETS);
    for (Print.Page page : Templates.of(UNEVEN, output).get(0).print().pages()) {
      for (Print.Placed placed : page.drawings()) {
        WordsApart.check(placed.drawing());
      }
    }
  }
}
