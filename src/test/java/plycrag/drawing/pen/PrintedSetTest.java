package plycrag.drawing.pen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Print;
import plycrag.document.Shape;
import plycrag.drawing.flat.FacetView;
import plycrag.layout.sheets.SheetFace;
import plycrag.wall.Output.Paper;

class PrintedSetTest {
  private static final CheckedLayout WALL =
      Walls.judged("[wall]\nname = \"Slip\"\n[[facet]]\nname = \"main\"\n");

  private static Print print(CheckedLayout wall, Paper paper) {
    Drawing front = FacetView.of(wall, wall.layout().facets().get(0), SheetFace.FRONT);
    View view = new View(ViewKind.FACET_FRONT, "facet-main-front", "main", () -> front);
    return PrintedSet.of(wall, paper, List.of(view, view));
  }

  private static List<String> words(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(shape -> ((Shape.Label) shape).text())
        .toList();
  }

  /** Fields of ISO 7200 (from memory): title, document type, sheet, legal owner, date of issue. */
  @Test
  void theBlockSaysWhatThePageIs() {
    Drawing frame = print(WALL, Paper.A4).pages().get(1).drawings().get(0).drawing();
    assertThat(words(frame))
        .contains("Slip", "Facet main, front", "Elevation", "facet-main-front", "2 of 2", "mm")
        .contains("Legal owner", "Date of issue");
  }

  /** A view stays in its frame: 20 mm on the left, 10 elsewhere, the block of 31.5 below. */
  @ParameterizedTest
  @EnumSource
  void theViewLiesBetweenFrameAndBlock(Paper paper) {
    Print.Page page = print(WALL, paper).pages().get(0);
    Print.Placed view = page.drawings().get(1);
    double scale = view.drawing().scale();
    Envelope ink = Inked.box(view.drawing());
    assertThat(view.at().x()).isGreaterThan(20);
    assertThat(view.at().x() + ink.getWidth() / scale).isLessThan(page.width() - 10);
    assertThat(view.at().y()).isGreaterThan(41.5);
    assertThat(view.at().y() + ink.getHeight() / scale).isLessThan(page.height() - 10);
  }

  /** 1:10 of a facet of 6 m is 600 mm: too long for A2's 594, so it takes A1. */
  @Test
  void aLargeViewTakesLargerPaper() {
    CheckedLayout wide =
        Walls.judged(
            """
            [[facet]]
            width = 6000
            [inserts]
            pattern = "lines"
            columns = [100, 150, 200]
            rows = [100]
            """);
    Print.Page page = print(wide, Paper.A4).pages().get(0);
    assertThat(page.width()).isEqualTo(841);
    assertThat(page.height()).isEqualTo(594);
  }
}
