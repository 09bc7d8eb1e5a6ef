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
 * A kick of 600 and a facet of 1500 that leans out 30°, of 45 by 90 mm, on rails of 45 by 140
 * between mats as thick, with posts 600 behind: at either of two stations plywood on both sides
 * holds post and brace to the rail, the heel to the rail, the heel to the stud, the post to the
 * tie, and tie and brace to the stud.
 */
class StandingListsTest {
  private static final String STANDING =
      """
      [wall]
      width = 1200
      raise = 140
      [[facet]]
      name = "kick"
      angle = 0
      length = 600
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
      [mat]
      thickness = 140
      """;

  private static final CheckedLayout WALL = Walls.judged(STANDING);

  /** So low that the plywood at the heels' feet leaves none of them to hold to the studs. */
  private static final CheckedLayout LOW =
      Walls.judged(STANDING.replace("length = 600", "length = 300"));

  /** All of its one sheet becomes its piece, which leaves nothing for the gussets on its studs. */
  private static final CheckedLayout WHOLE =
      Walls.judged(
          """
          [wall]
          width = 1200
          [[facet]]
          length = 1200
          [sheet]
          length = 1200
          width = 1200
          [frame]
          section = [45, 90]
          stud-spacing = 600
          [joints]
          bracket-screws = 14
          [inserts]
          pattern = "none"
          """);

  /** Three studs of 2310 between plates, of timber that is sold to 1800. */
  private static final CheckedLayout SPLICED =
      Walls.judged(
          """
          [wall]
          width = 1200
          [[facet]]
          length = 2400
          [frame]
          section = [45, 90]
          stud-spacing = 600
          long-studs = "spliced"
          [stock]
          lengths = [1200, 1800]
          [inserts]
          pattern = "none"
          """);

  private static List<String> rows(Table table) {
    return table.rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  private static String from(CheckedLayout wall, String mark) {
    return rows(JointList.of(wall)).stream()
        .filter(row -> row.startsWith(mark + "|"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Posts have their face 600 behind the frame's back at 18 + 90 = 108: at -708, their middle at
   * -753; they stand on the rail at 140. A strap of 2 leaves 33 of screws of 35; a gusset of 18
   * leaves 32 of 50; timber of 45 leaves 35 of 80. Pilots are 0.7 · 2/3 of the screw (USDA Wood
   * Handbook): 2.3. Gussets are counted at the first of their joints.
   */
  @Test
  void jointsSayWhatBites() {
    assertThat(from(WALL, "J14"))
        .isEqualTo("J14|support|end on side|PO1|RA1|-753|140|gusset|2|5|50|32|2.3||||||GU1 GU2");
    assertThat(from(WALL, "J18"))
        .contains("|TI1|ST4|")
        .endsWith("|gusset|2|5|50|32|2.3||||||GU9 GU10");
    assertThat(from(WALL, "J19"))
        .contains("|BC1|RA1|")
        .endsWith("|gusset|0|5|50|32|2.3||||||GU1 GU2");
    assertThat(from(WALL, "J20"))
        .contains("|BC1|TI1|")
        .endsWith("|gusset|0|5|50|32|2.3||||||GU9 GU10");
    assertThat(from(WALL, "J28")).contains("|BM1|PO1|").contains("|screw|2|5|80|35|2.3||||");
    assertThat(from(SPLICED, "J2")).endsWith("|strap|2|5|35|33|2.3|180 x 40 x 2||8|||");
  }

  /**
   * Ten at either station. A hole of half a millimetre more through the gusset; twelve screws, each
   * with its place.
   */
  @Test
  void gussetsSayWhereTheirScrewsGo() {
    List<String> rows = rows(GussetList.of(WALL));
    assertThat(rows).hasSize(20);
    String[] cells = rows.get(0).split("[|]", -1);
    assertThat(List.of(cells).subList(1, 5))
        .containsExactly("J14 J19", "PO1 RA1 BC1", "left side", "PO1");
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

  /**
   * A post's screws from both sides take turns, since 32 and 32 would meet in its 45: 7 d = 35 from
   * the edge that they pull at, each 0.85 · 5 d = 21.25 and 2 above the one before, on whole
   * millimetres. Read from the other side what is 70 from one edge is 87 - 70 = 17 from the other.
   */
  @Test
  void gussetsOnBothSidesAreMarkedEachAsItIsSeen() {
    List<String> rows = rows(GussetList.of(WALL));
    String[] left = rows.get(6).split("[|]", -1);
    String[] right = rows.get(7).split("[|]", -1);
    assertThat(List.of(left).subList(0, 7))
        .containsExactly("GU7", "J17", "PO1 TI1", "left side", "PO1", "87", "266");
    assertThat(List.of(right).subList(0, 7))
        .containsExactly("GU8", "J17", "PO1 TI1", "right side", "PO1", "87", "266");
    assertThat(left[14]).startsWith("70 70 56 56 ");
    assertThat(right[14]).startsWith("17 17 31 31 ");
    assertThat(left[15]).startsWith("35 82 35 82 ");
    assertThat(right[15]).startsWith("59 105 59 105 ");
  }

  /**
   * Two of 209 by 149 and one of 209 by 132 mm are 0.0899 m², beside each other with 3 mm for the
   * cut, the narrower one last.
   */
  @Test
  void gussetsThatNoOffcutTakesComeFromAFurtherSheet() {
    assertThat(rows(SheetList.of(WHOLE)))
        .endsWith(
            "||gusset||GU1||0|0|0|209|149|gusset over ST1, PL2, from a further sheet",
            "||gusset||GU2||424|0|0|209|132|gusset over ST2, PL2, from a further sheet",
            "||gusset||GU3||212|0|0|209|149|gusset over ST3, PL2, from a further sheet");
    PriceList none = PriceList.empty();
    MaterialWishes buying = Walls.parameters("[[facet]]\n").buying();
    assertThat(rows(ShoppingList.of(WHOLE, StickPlan.of(WHOLE, none), buying, none).table()))
        .anyMatch(
            row ->
                row.startsWith("sheets|plywood for what no offcut takes|1200 x 1200 mm|1|")
                    && row.contains("|for 0.09 m² in all; a smaller panel"));
  }

  /**
   * A heel reaches up to 140 + 262 = 402, and the gussets at its foot to 161 + 290/2 = 306. Of the
   * 96 between, even screws of 3.5 would want 12 d = 42 of the heel's end, three steps of 0.85 · 5
   * d = 14.9 and 2, on whole millimetres, and 7 d = 24.5 of plywood: 118. At either station.
   */
  @Test
  void steelThatNobodySellsIsWantedAllTheSame() {
    assertThat(new HardwareNeeds(LOW.layout(), Environment.INDOORS).needs())
        .filteredOn(need -> need.note().endsWith("; none of the catalogue fits"))
        .extracting(need -> need.what() + " " + need.size() + need.amount().all())
        .containsExactly("angle bracket 2");
  }

  /**
   * At either station four gussets of 12 screws, over three members, and six of 8, over two: 192.
   * Twelve brackets of 8 hold studs to plates: six where faces are square, six at the fold, where
   * those beside a heel are shorter, since its gussets reach up to 512 + 236/2 = 630 and the bend
   * is at 709.25, less than 80 higher. Beam, sill and the brace along the wall take two screws at
   * each post.
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
            "192 countersunk wood screw, gusset to frame 5 x 50 mm",
            "6 angle bracket 65 x 65 x 40 x 2 mm, 8 screws of 5 x 35 mm",
            "2 angle bracket 60 x 60 x 40 x 2 mm, 8 screws of 4.5 x 30 mm",
            "4 angle bracket 80 x 80 x 25 x 2 mm, 8 screws of 4.5 x 30 mm",
            "48 pan-head screw for brackets and straps 5 x 35 mm",
            "48 pan-head screw for brackets and straps 4.5 x 30 mm",
            "3 bolt through 90 mm of timber 10 mm",
            "6 washer for timber 10 mm",
            "3 nut 10 mm",
            "12 structural screw, member to member 5 x 80 mm");
    assertThat(JointHardware.counts(WALL.layout()))
        .containsEntry(JointHardware.Kind.BRACKET, 12)
        .containsEntry(JointHardware.Kind.BOLT, 3)
        .containsEntry(JointHardware.Kind.SCREW, 12)
        .containsEntry(JointHardware.Kind.GUSSET, 20)
        .doesNotContainKey(JointHardware.Kind.STRAP);
  }

  /** Two straps a splice and a bracket at each end of three studs, all of 8 screws. */
  @Test
  void strapsAreCountedOnBothSides() {
    List<Need> needs = new HardwareNeeds(SPLICED.layout(), Environment.INDOORS).needs();
    assertThat(
            needs.stream()
                .filter(want -> want.group().equals("hardware"))
                .filter(want -> want.amount().quantity().signum() > 0)
                .map(want -> want.amount().quantity() + " " + want.what() + " " + want.size()))
        .containsExactly(
            "6 angle bracket 65 x 65 x 40 x 2 mm, 8 screws of 5 x 35 mm",
            "6 perforated strap 180 x 40 x 2 mm, 8 screws of 5 x 35 mm",
            "96 pan-head screw for brackets and straps 5 x 35 mm");
    assertThat(JointHardware.counts(SPLICED.layout())).containsEntry(JointHardware.Kind.STRAP, 6);
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
            "bit|2.3 mm|pilot holes in softwood, screws of 5 mm, gusset to frame",
            "bit|2.3 mm|pilot holes in softwood, screws of 5 mm, brackets and straps",
            "bit|2.1 mm|pilot holes in softwood, screws of 4.5 mm, brackets and straps");
  }

  /** A strap is sold by what it is long over both legs, twice 90, its width and thickness. */
  @Test
  void articlesAreNamedAsPriceListsDo() {
    List<Need> needs = new HardwareNeeds(WALL.layout(), Environment.INDOORS).needs();
    List<Need> spliced = new HardwareNeeds(SPLICED.layout(), Environment.INDOORS).needs();
    assertThat(sizeOf(spliced, "perforated strap")).containsExactly(180.0, 40.0, 2.0);
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
        .hasSize(20)
        .allMatch(line -> !line.isBought() && line.units().signum() == 0 && line.volume() == 0);
    assertThat(gussets.get(0).need().what())
        .isEqualTo("gusset GU1 over PO1, RA1, BC1, an offcut of S1");
    assertThat(gussets.get(0).soldAs()).isEmpty();
  }
}
