package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.prices.PriceList;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.MaterialWishes.Environment;

/**
 * A kick of 300 and a facet of 1500 that leans out 30° on two posts 600 behind, of 45 by 90 mm: two
 * gussets hold the upper ties and the braces that end on them, straps the braces' feet.
 */
class StandingListsTest {
  private static final CheckedLayout WALL =
      Walls.judged(
          """
          [wall]
          width = 1200
          [[facet]]
          name = "kick"
          angle = 0
          length = 300
          [[facet]]
          name = "main"
          angle = 30
          length = 1500
          [frame]
          section = [45, 90]
          stud-spacing = 600
          [support]
          kind = "freestanding"
          behind = 600
          [inserts]
          pattern = "none"
          """);

  /** All of its one sheet becomes its piece, which leaves nothing for its gussets. */
  private static final CheckedLayout WHOLE =
      Walls.judged(
          """
          [wall]
          width = 1200
          raise = 200
          [[facet]]
          angle = 30
          length = 1500
          [sheet]
          length = 1500
          width = 1200
          [frame]
          section = [45, 90]
          stud-spacing = 600
          [support]
          kind = "freestanding"
          behind = 600
          [inserts]
          pattern = "none"
          """);

  private static List<String> rows(Table table) {
    return table.rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  private static List<String> from(String mark) {
    return rows(JointList.of(WALL)).stream().filter(row -> row.startsWith(mark + "|")).toList();
  }

  /**
   * Posts have their face 600 behind the frame's back at 18 + 90 = 108: at -708, their middle at
   * -753. A strap of 1.5 leaves 23.5 of screws of 25; a gusset of 18 leaves 32 of 50; timber of 45
   * leaves 35 of 80. Pilots are 0.7 · 2/3 of the screw (USDA Wood Handbook): 1.6, 2.3. A gusset is
   * counted at the first of its joints.
   */
  @Test
  void jointsSayWhatBites() {
    assertThat(from("J14"))
        .containsExactly(
            "J14|support|end on side|PO1|RA1|-753|90|bracket|1|4.5|30|28|2.1|80 x 80 x 25 x 2|90|8|||");
    assertThat(from("J19").get(0)).endsWith("|gusset|1|5|50|32|2.3||||||GU1");
    assertThat(from("J20").get(0)).endsWith("|strap|2|3.5|25|23.5|1.6|180 x 20 x 1.5||8|||");
    assertThat(from("J21").get(0)).endsWith("|gusset|0|5|50|32|2.3||||||GU1");
    assertThat(from("J30").get(0)).contains("|screw|2|5|80|35|2.3||||");
  }

  /** A hole of half a millimetre more through the gusset; twelve screws, each with its place. */
  @Test
  void gussetsSayWhereTheirScrewsGo() {
    List<String> rows = rows(GussetList.of(WALL));
    assertThat(rows).hasSize(2);
    String[] cells = rows.get(0).split("[|]", -1);
    assertThat(cells[2]).isEqualTo("TI2 ST4 BC1");
    assertThat(List.of(cells).subList(7, 13)).containsExactly("18", "S1", "5", "50", "5.5", "2.3");
    assertThat(cells[13].split(" ", -1)).hasSize(12);
    assertThat(cells[14].split(" ", -1)).hasSize(12);
    assertThat(cells[15].split(" ", -1)).hasSize(12);
    // EN 1995-1-1 Table 8.2, predrilled: 3 d = 15 from an unloaded edge
    double length = Double.parseDouble(cells[5]);
    for (String along : cells[14].split(" ", -1)) {
      assertThat(Double.parseDouble(along)).isBetween(15.0, length - 15);
    }
  }

  /** Two of 191 by 91 mm are 0.0348 m², beside each other with 3 mm for the cut. */
  @Test
  void gussetsThatNoOffcutTakesComeFromAFurtherSheet() {
    assertThat(rows(SheetList.of(WHOLE)))
        .endsWith(
            "||gusset||GU1||0|0|0|191|91|gusset over TI1, ST1, from a further sheet",
            "||gusset||GU2||194|0|0|191|91|gusset over TI2, ST3, from a further sheet");
    PriceList none = PriceList.empty();
    MaterialWishes buying = Walls.parameters("[[facet]]\n").buying();
    assertThat(rows(ShoppingList.of(WHOLE, StickPlan.of(WHOLE, none), buying, none).table()))
        .anyMatch(
            row ->
                row.startsWith("sheets|plywood for what no offcut takes|1500 x 1200 mm|1|")
                    && row.contains("|for 0.03 m² in all; a smaller panel"));
  }

  /** A rail and the lower plate, at either post. */
  @Test
  void steelThatNobodySellsIsWantedAllTheSame() {
    assertThat(new HardwareNeeds(WHOLE.layout(), Environment.INDOORS).needs())
        .filteredOn(need -> need.note().endsWith("; none of the catalogue fits"))
        .extracting(need -> need.what() + " " + need.size() + need.amount().all())
        .containsExactly("angle bracket 2");
  }

  /**
   * Two gussets of 12 screws; four straps, on both sides of two braces, and 16 brackets of 8: 6 at
   * the fold, one each at post and rail, rail and stud, tie and post, tie and stud, post and upper
   * tie of either station. The brace along the wall takes two screws at each post.
   */
  @Test
  void hardwareOfASupportIsCountedWithTheFrames() {
    List<Need> needs = new HardwareNeeds(WALL.layout(), Environment.INDOORS).needs();
    assertThat(
            needs.stream()
                .filter(want -> want.amount().quantity().signum() > 0)
                .skip(1)
                .map(want -> want.amount().quantity() + " " + want.what() + " " + want.size()))
        .containsExactly(
            "24 countersunk wood screw, gusset to frame 5 x 50 mm",
            "6 angle bracket 65 x 65 x 40 x 2 mm, 8 screws of 5 x 35 mm",
            "16 angle bracket 80 x 80 x 25 x 2 mm, 8 screws of 4.5 x 30 mm",
            "4 perforated strap 180 x 20 x 1.5 mm, 8 screws of 3.5 x 25 mm",
            "48 pan-head screw for brackets and straps 5 x 35 mm",
            "128 pan-head screw for brackets and straps 4.5 x 30 mm",
            "32 pan-head screw for brackets and straps 3.5 x 25 mm",
            "3 bolt through 90 mm of timber 10 mm",
            "6 washer for timber 10 mm",
            "3 nut 10 mm",
            "4 structural screw, member to member 5 x 80 mm");
    assertThat(JointHardware.counts(WALL.layout()))
        .containsEntry(JointHardware.Kind.BRACKET, 22)
        .containsEntry(JointHardware.Kind.STRAP, 4)
        .containsEntry(JointHardware.Kind.BOLT, 3)
        .containsEntry(JointHardware.Kind.SCREW, 4)
        .containsEntry(JointHardware.Kind.GUSSET, 2);
  }

  /** From the posts' backs at -708 - 90 out to the upper edge at 1500 · sin 30° = 750: 1548. */
  @Test
  void supportsAreCutWithTheFrame() {
    assertThat(rows(CutList.of(WALL).table("C24")))
        .contains("RA1 RA2|base rail|45x140|1548|0|0|2|support|0|0|C24");
  }

  /** Clearance and pilot for each kind of screw, half a millimetre and 0.7 · 2/3. */
  @Test
  void everyKindOfScrewHasItsBits() {
    assertThat(rows(ToolList.of(WALL)))
        .contains(
            "bit|5.5 mm|clearance holes in the first member, screws of 5 mm, member to member",
            "bit|2.3 mm|pilot holes in softwood, screws of 5 mm, member to member",
            "bit|5.5 mm|clearance holes in the gusset, screws of 5 mm, gusset to frame",
            "bit|1.6 mm|pilot holes in softwood, screws of 3.5 mm, brackets and straps");
  }

  /** A strap is sold by what it is long over both legs, twice 90, its width and thickness. */
  @Test
  void articlesAreNamedAsPriceListsDo() {
    List<Need> needs = new HardwareNeeds(WALL.layout(), Environment.INDOORS).needs();
    assertThat(sizeOf(needs, "perforated strap")).containsExactly(180.0, 20.0, 1.5);
    assertThat(sizeOf(needs, "angle bracket")).containsExactly(65.0, 40.0, 2.0);
    assertThat(sizeOf(needs, "structural screw")).containsExactly(5.0, 80.0);
    assertThat(needs.stream().filter(want -> want.what().startsWith("structural screw")))
        .allMatch(want -> want.note().startsWith("zinc-plated at least; countersunk head, drive"));
  }

  private static List<Double> sizeOf(List<Need> needs, String what) {
    return needs.stream()
        .filter(want -> want.what().startsWith(what))
        .findFirst()
        .orElseThrow()
        .sourcing()
        .size();
  }

  /** Gussets come from what the pieces leave and need not be bought. */
  @Test
  void gussetsAreListedAndNotBought() {
    StickPlan plan = StickPlan.of(WALL, PriceList.empty());
    MaterialWishes buying = Walls.parameters("[[facet]]\n").buying();
    List<ShoppingLine> gussets =
        ShoppingList.of(WALL, plan, buying, PriceList.empty()).lines().stream()
            .filter(line -> line.need().what().startsWith("gusset"))
            .toList();
    assertThat(gussets)
        .hasSize(2)
        .allMatch(line -> !line.isBought() && line.units().signum() == 0 && line.volume() == 0);
    assertThat(gussets.get(0).need().what())
        .isEqualTo("gusset GU1 over TI2, ST4, BC1, an offcut of S1");
    assertThat(gussets.get(0).soldAs()).isEmpty();
  }
}
