package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.check.Found;
import plycrag.document.Book.Block;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.layout.facet.FacetLayout;
import plycrag.prices.PriceList;
import plycrag.read.lists.PriceFile;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;

/**
 * What the book says in numbers of a plumb wall of 1200 by 1200: a sheet of 2440 by 1220 by 18, two
 * plates of 1200 and three studs of 1110 of 45 by 90 out of a stick of 6 m, four inserts.
 */
class BayBookTest {
  private static final String TEXT = Found.bay("300, 800", "250, 650");
  private static final CheckedLayout WALL = Walls.judged(TEXT);
  private static final PriceList NONE = PriceList.empty();

  private static PriceList prices(String rows) {
    String header = "article,size,unit,price,currency,tax\n";
    return PriceFile.read("prices.csv", TestFiles.bytes(header + rows)).value().orElseThrow();
  }

  private static List<String> words(List<Block> blocks) {
    return blocks.stream()
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .toList();
  }

  private static List<String> rows(List<Block> blocks, String title) {
    return blocks.stream()
        .filter(Listing.class::isInstance)
        .map(block -> ((Listing) block).table())
        .filter(table -> table.title().startsWith(title))
        .flatMap(table -> table.rows().stream())
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  private static List<Block> buying(PriceList prices) {
    StickPlan plan = StickPlan.of(WALL, prices);
    ShoppingList list = ShoppingList.of(WALL, plan, Walls.parameters(TEXT).buying(), prices);
    return new Buying(WALL, plan, list).blocks();
  }

  private static List<Block> sawing(PriceList prices) {
    return new Sawing(WALL, StickPlan.of(WALL, prices), "C24", figures(WALL)).blocks();
  }

  /**
   * Timber 5.73 m · 0.00405 m² · 420 kg/m³ = 9.747 kg, its middle 18 + 45 behind the face. The
   * sheet 1.44 m² · 0.018 m · 680 = 17.626 kg, 9 behind it: together 27.373 kg, (9.747 · 63 +
   * 17.626 · 9) / 27.373 = 28.2 behind it. At 25 kg each two people lift either.
   */
  @Test
  void everyPartHasItsMassItsMiddleAndWhoLiftsIt() {
    assertThat(rows(new StandingUp(WALL, figures(WALL)).blocks(), "What it weighs"))
        .containsExactly(
            "frame of facet main|9.7|2|600 mm|-63 mm|600 mm",
            "the same with its sheets|27.4|2|600 mm|-28 mm|600 mm",
            "all of it|27.4|2|600 mm|-28 mm|600 mm");
  }

  /** At 10 kg each, 27.373 kg take three people and 9.747 kg one, but never fewer than two lift. */
  @Test
  void whoeverIsNeededInPartIsNeeded() {
    CheckedLayout weak = Walls.judged(TEXT + "[handling]\nper-person = 10\n");
    assertThat(rows(new StandingUp(weak, figures(weak)).blocks(), "What it weighs"))
        .startsWith(
            "frame of facet main|9.7|2|600 mm|-63 mm|600 mm",
            "the same with its sheets|27.4|3|600 mm|-28 mm|600 mm");
  }

  /** Frame alone: √(1200² + 90²) = 1203.4 mm, rounded up; sheets and frame are 108 deep. */
  @Test
  void whatItTakesOfTheRoomIsRoundedUp() {
    List<Block> blocks = new StandingUp(WALL, figures(WALL)).blocks();
    assertThat(words(blocks))
        .contains("The frame of main needs 1204 mm of height to be tilted up from the floor.");
    assertThat(rows(blocks, "What it takes of the room").get(0))
        .startsWith("main|1200 mm|108 mm|1200 mm|");
  }

  /** 4 inserts and 5 % are 5; paint 1.44 · 2 / 10 = 0.288 l, of which 0.3 are bought. */
  @Test
  void theListTellsWhatItTakesAndWhatToBuy() {
    List<String> rows = rows(buying(NONE), "Shopping list");
    assertThat(rows)
        .contains(
            "structural plywood, 18 mm thick as measured: 2440 x 1220 mm|1|1|☐",
            "bolt for a hold, one an insert: M10|4 + 1|5|☐",
            "countersunk wood screw, sheet to frame: 4.5 x 50 mm|39|39|☐",
            "paint for the climbing face|0.3 l|0.3 l|☐");
    assertThat(rows).hasSize(10);
  }

  /**
   * 1 - 1.44 / 2.9768 = 51.6 %, 1 - 5.73 / 6 = 4.5 %; 36.44 + 10.21 = 46.6 kg; 0.0536 + 0.0243 =
   * 0.078 m³.
   */
  @Test
  void theLoadIsTold() {
    assertThat(rows(buying(NONE), "The whole job"))
        .containsExactly(
            "Climbing face|1.44|m²",
            "Waste of sheets|51.6|%",
            "Waste of sticks|4.5|%",
            "To carry|47|kg",
            "Sheets and sticks in the van|0.08|m³",
            "Longest to carry|6000 mm|");
    assertThat(words(buying(NONE)))
        .anyMatch(
            text -> text.contains("420 kg/m³") && text.contains(" 8 lines of the list have no"));
  }

  /** A sheet of 40 and 20 %: 48.00. One of ten lines has a price, nine have none. */
  @Test
  void anIncompleteTotalIsNone() {
    List<Block> blocks = buying(prices("sheet,,piece,40,EUR,20\n"));
    assertThat(rows(blocks, "What it costs"))
        .contains(
            "sheets|48.00|complete",
            "hardware||incomplete: 2 missing",
            "total|48.00|incomplete: 9 missing");
    assertThat(words(blocks)).anyMatch(text -> text.startsWith("The total is incomplete"));
  }

  /**
   * One each of ten: sheet 48.00, a metre at 2 six times, 5 and 5 inserts and bolts at 1, 39 screws
   * at 0.1, six brackets at 1, 48 screws at 0.1, 0.3 and 0.1 l, which are whole pieces at 2, and
   * one paper at 1: 48 + 12 + 5 + 5 + 3.9 + 6 + 4.8 + 2 + 2 + 1 = 89.70; / 1.44 = 62.29, / 4 =
   * 22.43.
   */
  @Test
  void aTotalIsShared() {
    List<Block> blocks =
        buying(
            prices(
                """
                sheet,,piece,40,EUR,20
                timber,45x90 mm,metre,2,EUR,
                insert,12 mm,piece,1,EUR,
                hold bolt,,piece,1,EUR,
                sheet screw,,piece,0.1,EUR,
                bracket,,piece,1,EUR,
                bracket screw,,piece,0.1,EUR,
                paint,,piece,2,EUR,
                sealant,,piece,2,EUR,
                sandpaper,,piece,1,EUR,
                """));
    assertThat(rows(blocks, "What it costs")).contains("total|89.70|complete");
    assertThat(words(blocks))
        .contains("That is EUR 62.29 for a square metre of climbing face and 22.43 for an insert.");
    assertThat(rows(blocks, "Shopping list"))
        .contains("structural timber, 45 x 90 mm actual: 6000 mm|1|6 m|12.00|☐");
  }

  /** 5730 of 6000 mm become members: 4.5 % do not. */
  @Test
  void theCuttingPlanTellsWhatItBuysAndWastes() {
    assertThat(words(sawing(NONE)))
        .containsExactly(
            "The plan buys 1 stick, 6000 mm in all. 4.5 % of the sticks is waste, saw cuts included."
                + " It is counted by length bought. No plan buys less: the bound is the same length.");
    CheckedLayout hand = Walls.judged(TEXT + "[stock]\nlengths = [3600]\nat-hand = [3600]\n");
    // 2 · 1200 + 1110 and two kerfs of 3 are 3516 of 3600, two studs are 2223 of the other
    assertThat(
            words(new Sawing(hand, StickPlan.of(hand, NONE), "C24", figures(hand)).blocks()).get(0))
        .startsWith("The plan buys 1 stick, 3600 mm in all, and uses 1 stick at hand. 20.4 % of");
  }

  /** A stick of 6 m at 2 a metre and 20 %: 14.40. Any shorter ones together are longer. */
  @Test
  void theCuttingPlanTellsWhatItCosts() {
    assertThat(words(sawing(prices("timber,45x90 mm,metre,2,EUR,20\n"))).get(0))
        .endsWith("The sticks cost EUR 14.40, and no plan costs less.");
  }

  @Test
  void alikePartsShareALine() {
    assertThat(rows(List.of(Listings.cutList(WALL, "C24")), "Cut list"))
        .containsExactly(
            "PL1 PL2|plate|45x90|2|1200 mm|square", "ST1 ST2 ST3|stud|45x90|3|1110 mm|square");
    assertThat(rows(List.of(Listings.joints(WALL)), "Joints"))
        .containsExactly(
            "end on side|ST1–PL1, ST1–PL2, ST2–PL1, ST2–PL2, ST3–PL1, ST3–PL2|1 × bracket"
                + " 65 x 65 x 40 x 2 mm, 8 screws of 5 x 35 mm");
    assertThat(rows(List.of(Listings.pieces(WALL)), "Pieces"))
        .containsExactly("P1|S1|main|1200 x 1200 mm");
  }

  @Test
  void theFrameIsMarkedOutApartFromTheSheets() {
    Making making = new Making(WALL, figures(WALL));
    assertThat(rows(making.frame(), "Marking out the frame"))
        .containsExactly(
            "PL1|left side of each stud||0; 577.5; 1155, from left end",
            "PL2|left side of each stud||0; 577.5; 1155, from left end");
    assertThat(rows(making.sheets(), "Marking out sheet S1"))
        .hasSize(7)
        .startsWith("S1|insert holes|250 from lower edge|300; 800, from left edge");
  }

  /** Pieces of 600 at a gap of 2 lie beside each other; 0.01 mm are for rounding. */
  @Test
  void piecesLieBesideEachOtherAcrossASeam() {
    CheckedLayout seamed = Walls.judged(Found.SEAMED + "section = [45, 90]\n");
    FacetLayout facet = seamed.layout().facets().get(0);
    assertThat(facet.pieces()).hasSize(2);
    assertThat(new Seams(facet, 2).words(facet.pieces().get(0)))
        .isEqualTo("Seen from the front: right of it P2.");
    assertThat(new Seams(facet, 2).words(facet.pieces().get(1)))
        .isEqualTo("Seen from the front: left of it P1.");
    assertThat(new Seams(facet, 1.995).words(facet.pieces().get(0))).isNotEmpty();
    assertThat(new Seams(facet, 1.98).words(facet.pieces().get(0))).isEmpty();
  }

  /**
   * A flange of 13 mm and 4 mm stay clear of the stud from 577.5 to 622.5: a column asked for at
   * 590 goes to 577.5 - 17 = 560.5, on the marking grid 560, 30 to the left.
   */
  @Test
  void aColumnThatMovedSaysHowFar() {
    String nudged = Found.bay("590", "300", "when-blocked = \"shift\"");
    assertThat(SettingOut.of(Walls.laidOut(nudged)).get(0).toString())
        .contains("1 insert asked for, in 1 column and 1 row.")
        .contains("Column 1, asked for at 590 mm, is set at 560 mm, 30 mm to the left.")
        .contains("In its way: the stud at 600 mm (29.5 mm short).");
    String right = Found.bay("612", "300", "when-blocked = \"shift\"");
    // 622.5 + 17 = 639.5, on the grid 640
    assertThat(SettingOut.of(Walls.laidOut(right)).get(0).toString())
        .contains("is set at 640 mm, 28 mm to the right.");
    String level = Found.bay("300", "1145", "setback = 0", "when-blocked = \"shift\"");
    // the upper plate from 1155: 1155 - 17 = 1138 is clear of it
    assertThat(SettingOut.of(Walls.laidOut(level)).get(0).toString())
        .contains("Row 1, asked for at 1145 mm, is set at 1138 mm, 7 mm down.");
  }

  private static Figures figures(CheckedLayout wall) {
    return new Figures(Walls.portfolio(wall));
  }
}
