package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.prices.PriceList;
import plycrag.wall.Wall;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.MaterialWishes.Environment;

class StockTest {
  private static final CheckedLayout WALL =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  @Test
  void theCutListHasEveryMemberOnceAndEqualOnesInARow() {
    List<CutList.Row> rows = CutList.of(WALL).rows();
    assertThat(rows.stream().map(row -> String.join(" ", row.marks()) + " " + row.length()))
        .containsExactly("PL1 PL2 1200.0", "ST1 ST2 ST3 2655.0", "BL1 BL2 532.5");
    assertThat(texts(CutList.of(WALL).table("C24").rows().get(1)))
        .containsExactly(
            "ST1 ST2 ST3", "stud", "45x90", "2655", "0", "0", "3", "main", "0", "0", "C24");
  }

  /** Rails are 140 deep; posts and the frame are of 45 x 90. */
  @Test
  void theCutListTellsEachMembersSection() {
    assertThat(CutList.of(Walls.judged(StandingWall.TOML)).rows())
        .extracting(CutList.Row::role, CutList.Row::section)
        .contains(tuple("stud", "45x90"), tuple("post", "45x90"), tuple("base rail", "45x140"))
        .doesNotContain(tuple("base rail", "45x90"));
  }

  @Test
  void theShoppingListCountsWhatTheLayoutHolds() {
    Table shopping = shopping(WALL);
    assertThat(quantity(shopping, "sheets")).isEqualTo(1);
    assertThat(quantity(shopping, "inserts")).isEqualTo(50);
    assertThat(quantity(shopping, "screws"))
        .isEqualTo(WALL.layout().facets().get(0).screws().size())
        .isEqualTo(FastenerList.of(WALL, Environment.INDOORS).rows().size());
  }

  /** What no length sold holds is on the list all the same, and says so. */
  @Test
  void theShoppingListHidesNoMember() {
    String wall = "[[facet]]\nwidth = 1200\nlength = 2400\n[stock]\nlengths = [2000]\n";
    CheckedLayout checked = Walls.judged(wall);
    assertThat(shopping(checked).rows())
        .filteredOn(row -> row.get(1).text().endsWith("longer than is sold"))
        .hasSize(4)
        .allMatch(row -> row.get(2).text().equals("2310 mm"));
  }

  private static Table shopping(CheckedLayout checked) {
    PriceList none = PriceList.empty();
    MaterialWishes buying = Walls.parameters("[[facet]]\n").buying();
    return ShoppingList.of(checked, StickPlan.of(checked, none), buying, none).table();
  }

  private static int quantity(Table shopping, String group) {
    return shopping.rows().stream()
        .filter(row -> row.get(0).text().equals(group))
        .mapToInt(row -> Integer.parseInt(row.get(3).text()))
        .sum();
  }

  private static List<String> texts(List<Cell> row) {
    return row.stream().map(Cell::text).toList();
  }

  /**
   * USDA Wood Handbook (FPL-GTR-190), chapter 8: root about two thirds of the shank; lead hole
   * about 70 % of the root in softwood. For a number 10 screw, 4.826 mm (ASME B18.6.1), 2.25 mm.
   */
  @Test
  void thePilotFollowsTheHandbook() {
    String wall = "[[facet]]\n[screws]\ndiameter = 4.826\n";
    assertThat(ScrewDrilling.of(Walls.parameters(wall).screws()).pilot()).isEqualTo(2.3);
    assertThat(ScrewDrilling.of(Walls.parameters(wall + "predrilled = false\n").screws()).pilot())
        .isZero();
  }

  /** 50 mm less a sheet of 18 mm; 0.5 mm of play, 70 % of the root (USDA Wood Handbook). */
  @Test
  void everyScrewSaysWhatToDrillAndWhatToAskFor() {
    Table fasteners = FastenerList.of(WALL, Environment.DAMP);
    assertThat(fasteners.rows())
        .extracting(StockTest::texts)
        .allSatisfy(
            row ->
                assertThat(row.subList(7, row.size()))
                    .containsExactly(
                        "4.5",
                        "50",
                        "5",
                        "2.1",
                        "32",
                        "5 mm",
                        "2 mm",
                        "",
                        "countersunk",
                        "TX 20",
                        "hot-dip galvanized or stainless"));
  }

  /** ASME B18.6.1: a number 10 screw is 0.060 + 10 x 0.013 = 0.19 in thick. */
  @Test
  void inInchFilesTheScrewHasItsNumber() {
    CheckedLayout checked = Walls.judged("[wall]\nunit = \"in\"\n[[facet]]\n");
    Table fasteners = FastenerList.of(checked, Environment.INDOORS);
    assertThat(texts(fasteners.rows().get(0)).subList(12, 16))
        .containsExactly("7/32 in", "5/64 in", "No. 10", "countersunk");
  }

  /** Two plates of 45 mm and two diameters of 10 mm are 110 mm, which is sold. */
  @Test
  void boltsAreTheShortestSoldThatReachThrough() {
    Wall wall = WALL.layout().wall();
    assertThat(BoltSize.of(wall).length()).contains(110.0);
  }

  /** EN 1995-1-1 Table 8.2, unloaded: 3d and 7d predrilled, 5d and 10d not; d = 4.5 and α = 0. */
  @Test
  void edgeAndEndDistancesFollowTheTable() {
    assertThat(Walls.parameters("[[facet]]\n").clearance().screw().toSheetEdge()).isEqualTo(13.5);
    assertThat(Walls.parameters("[[facet]]\n").clearance().screw().toMemberEnd()).isEqualTo(31.5);
    String bare = "[[facet]]\n[screws]\npredrilled = false\n";
    assertThat(Walls.parameters(bare).clearance().screw().toMemberEdge()).isEqualTo(22.5);
    assertThat(Walls.parameters(bare).clearance().screw().toMemberEnd()).isEqualTo(45);
  }
}
