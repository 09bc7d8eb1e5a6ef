package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.LabelSheet;
import plycrag.document.LabelSheet.Label;
import plycrag.prices.PriceList;
import plycrag.stock.StickPlan;

/** One sheet on three studs of 2655, two plates of 1200 and two blockings of 532.5. */
class PartLabelsTest {
  private static final CheckedLayout WALL =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  private LabelSheet sheet;

  @BeforeEach
  void makeTheLabels() {
    sheet = PartLabels.of(WALL, StickPlan.of(WALL, PriceList.empty()));
  }

  private Label label(String mark) {
    List<Label> found = sheet.labels().stream().filter(label -> label.mark().equals(mark)).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void everyPartHasOne() {
    assertThat(sheet.labels().stream().map(Label::mark))
        .containsExactly("PL1", "PL2", "ST1", "ST2", "ST3", "BL1", "BL2", "P1");
    assertThat(sheet.stamp()).isEqualTo("NOT FOR MAKING");
  }

  /** The middle stud stands between both plates, a blocking on either side of it. */
  @Test
  void aMemberNamesWhatItMeets() {
    assertThat(label("ST2").what()).isEqualTo("stud, 45 x 90 mm, 2655 mm long");
    assertThat(label("ST2").neighbours()).isEqualTo("Joined to PL1 PL2 BL1 BL2.");
    assertThat(label("BL2").neighbours()).startsWith("Joined to ").contains("ST2 ST3");
    assertThat(label("ST1").where()).matches("Facet main, from stick [1-9]\\.");
  }

  @Test
  void aPieceNamesWhatItIsScrewedTo() {
    assertThat(label("P1").what()).isEqualTo("piece, 1200 across x 2400 mm up, 18 mm thick");
    assertThat(label("P1").where()).isEqualTo("Facet main, from sheet S1.");
    assertThat(label("P1").neighbours()).isEqualTo("Screwed to PL2 ST1 ST2 ST3 BL1 BL2.");
  }

  /** Four sheets of 1200 x 2400 make a face of 4800 x 2400: two above two, lain across. */
  @Test
  void aPieceNamesWhatLiesBesideIt() {
    String text =
        """
        [wall]
        width = 4808
        [[facet]]
        name = "main"
        angle = 0
        length = 2404
        [sheet]
        length = 2403
        width = 1201
        seam-gap = 2
        lay = "across"
        """;
    CheckedLayout wall = Walls.judged(text);
    List<Label> pieces =
        PartLabels.of(wall, StickPlan.of(wall, PriceList.empty())).labels().stream()
            .filter(label -> label.mark().startsWith("P") && !label.mark().startsWith("PL"))
            .toList();
    assertThat(pieces).hasSize(4);
    assertThat(pieces.get(0).neighbours())
        .endsWith("Seen from the front: right of it P2, above it P3.");
    assertThat(pieces.get(3).neighbours())
        .endsWith("Seen from the front: left of it P3, below it P2.");
  }

  /** A rail is 140 deep under studs of 45 x 90. */
  @Test
  void aMemberOfTheSupportTellsItsOwnSection() {
    CheckedLayout wall =
        Walls.judged(
            """
            [[facet]]
            angle = 20
            width = 1200
            length = 1500
            [support]
            kind = "freestanding"
            """);
    assertThat(PartLabels.of(wall, StickPlan.of(wall, PriceList.empty())).labels())
        .filteredOn(label -> List.of("RA1", "PO1", "ST1").contains(label.mark()))
        .extracting(label -> label.what().replaceFirst(", [^,]* long", ""))
        .containsExactlyInAnyOrder(
            "base rail, 45 x 140 mm", "post, 45 x 90 mm", "stud, 45 x 90 mm");
  }
}
