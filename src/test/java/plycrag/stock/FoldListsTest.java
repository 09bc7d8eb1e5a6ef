package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.prices.PriceList;
import plycrag.wall.buying.MaterialWishes.Environment;

/**
 * A kick of 600 and a facet of 1200 that leans out 30°, of sheets of 18 and timber of 45 by 90 mm:
 * every cut at the fold is 15° from square. tan 15° = 0.267949, cos 15° = 0.965926.
 */
class FoldListsTest {
  private static final String TEXT =
      """
      [wall]
      width = 1200
      [[facet]]
      name = "kick"
      angle = 0
      length = 600
      [[facet]]
      name = "main"
      angle = 30
      length = 1200
      [frame]
      section = [45, 90]
      stud-spacing = 600
      [inserts]
      pattern = "none"
      """;

  private static final CheckedLayout WALL = Walls.judged(TEXT);

  private static List<String> rows(Table table) {
    return table.rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  /**
   * The plate at the fold is ripped to 15° and 45 / cos 15° = 46.587 along the sheet, whose back
   * ends 18 · tan 15° = 4.823 above 600: the stud begins at 45 and ends at 600 + 4.823 - 46.587 =
   * 558.236, at its own back 90 · tan 15° = 24.115 higher: 537.351 over the long points. The
   * facet's from 1200 - 45 the same way down: 1155 - 41.764 + 24.115 = 1137.351.
   */
  @Test
  void studsAreListedOverTheirLongPoints() {
    assertThat(rows(CutList.of(WALL).table("C24")))
        .containsExactly(
            "PL1 PL2|plate|45x90|1200|0|0|2|kick|0|0|C24",
            "ST1 ST2 ST3|stud|45x90|537.351|0|15|3|kick|0|0|C24",
            "PL3 PL4|plate|45x90|1200|0|0|2|main|0|0|C24",
            "ST4 ST5 ST6|stud|45x90|1137.351|15|0|3|main|0|0|C24");
  }

  /** Sheets 18 · tan 15° = 4.823; studs 90 · tan 15° = 24.115; plates 45 · tan 15° = 12.058. */
  @Test
  void theSawListSaysHowMuchLongerOneSideIs() {
    List<SawList.Cut> cuts = SawList.of(WALL).cuts();
    assertThat(cuts).allMatch(cut -> Math.abs(cut.angle() - 15) < 0.005);
    assertThat(cuts)
        .extracting(cut -> cut.part() + " " + cut.what() + " " + cut.longer() + " " + cut.facet())
        .containsExactly(
            "P1 upper edge back kick",
            "PL2 rip along the sheet upper face kick",
            "ST1 upper end back kick",
            "ST2 upper end back kick",
            "ST3 upper end back kick",
            "P2 lower edge back main",
            "PL3 rip along the sheet lower face main",
            "ST4 lower end back main",
            "ST5 lower end back main",
            "ST6 lower end back main");
    double[] longer = {4.823, 12.058, 24.115, 24.115, 24.115};
    for (int at = 0; at < cuts.size(); at++) {
      assertThat(cuts.get(at).difference()).isCloseTo(longer[at % 5], within(0.001));
    }
    assertThat(rows(SawList.of(WALL).table()).get(0)).isEqualTo("P1|upper edge|15|back|4.823|kick");
  }

  /** Turned the other way the front is longer: the upper sheet leans back from a leaning one. */
  @Test
  void atAnOutwardFoldTheFrontIsLonger() {
    String outward =
        """
        [wall]
        width = 1200
        [[facet]]
        angle = 20
        length = 1000
        [[facet]]
        angle = 0
        length = 1000
        """;
    // 18 · tan 10° = 3.174
    SawList.Cut cut = SawList.of(Walls.judged(outward)).cuts().get(0);
    assertThat(cut.what()).isEqualTo("upper edge");
    assertThat(cut.longer()).isEqualTo("front");
    assertThat(cut.angle()).isCloseTo(10, within(0.005));
    assertThat(cut.difference()).isCloseTo(3.174, within(0.001));
  }

  /**
   * P1 is 600 + 4.823 high on its back, P2 1200 + 4.823; a cut of 3 mm lies between and beside
   * them. What is left of 2440 by 1220: 2440 - 2406 = 34 at the right; above both 1220 - 1207.823 =
   * 12.177; above P1 1204.823 - 607.823 = 597.
   */
  @Test
  void sheetsComeApartWithKerfsBetween() {
    assertThat(rows(SheetList.of(WALL)))
        .containsExactly(
            "S1||sheet||||0|0|0|2440|1220|front face up",
            "S1||piece||P1|kick|0|0|0|1200|604.823|",
            "S1||piece||P2|main|1203|0|0|1200|1204.823|",
            "S1||cut|1|||2403|0|90|1220|3|",
            "S1||cut|2|||0|1204.823|0|2403|3|",
            "S1||cut|3|||1200|0|90|1204.823|3|",
            "S1||cut|4|||0|604.823|0|1200|3|",
            "S1||offcut||||0|607.823|0|1200|597|",
            "S1||offcut||||0|1207.823|0|2403|12.177|",
            "S1||offcut||||2406|0|0|34|1220|");
  }

  /**
   * Twelve ends take a bracket of 8 screws each, in two sizes: six where faces are square, six in a
   * corner of 75° or 105° between. A screw of 35 through 2 mm of steel bites 33, its pilot is 5 ·
   * 2/3 · 0.7 = 2.3. Bolts would go 80 from either end and in the middle; a washer of 30 clears the
   * legs of 80 beside the outer studs at 45 + 80 + 15 = 140 and 1155 - 80 - 15 = 1060, the middle
   * stud at 577.5 - 15 = 562.5.
   */
  @Test
  void jointsSayWhatEachTakes() {
    List<String> rows = rows(JointList.of(WALL));
    assertThat(rows).hasSize(13);
    assertThat(rows.get(0))
        .isEqualTo(
            "J1|kick|end on side|ST1|PL1|22.5|45|bracket|1|5|35|33|2.3|65 x 65 x 40 x 2|90|8|||");
    assertThat(rows.get(6)).startsWith("J7|kick|across the fold|PL2|PL3|600|");
    assertThat(rows.get(6)).contains("|bolt|3|10|110|||");
    assertThat(rows.get(6)).endsWith("|140 562 1060|45 45 45|");
  }

  /** Twelve brackets of 8 screws: 48 of each of two sizes; three bolts, six washers, three nuts. */
  @Test
  void hardwareIsCountedOverAllJoints() {
    List<Need> needs = new HardwareNeeds(WALL.layout(), Environment.INDOORS).needs();
    assertThat(
            needs.stream()
                .filter(want -> want.group().equals("hardware"))
                .filter(want -> want.amount().quantity().signum() > 0)
                .map(want -> want.what() + " " + want.amount().quantity() + " " + want.size()))
        .containsExactly(
            "angle bracket 6 65 x 65 x 40 x 2 mm, 8 screws of 5 x 35 mm",
            "angle bracket 6 80 x 80 x 25 x 2 mm, 8 screws of 4.5 x 30 mm",
            "pan-head screw for brackets and straps 48 5 x 35 mm",
            "pan-head screw for brackets and straps 48 4.5 x 30 mm",
            "bolt through 90 mm of timber 3 10 mm",
            "washer for timber 6 10 mm",
            "nut 3 10 mm");
    assertThat(needs.stream().filter(want -> want.what().startsWith("bolt through")))
        .allMatch(want -> want.note().equals("110 mm under the head; zinc-plated at least"));
  }

  /** A hole 1 mm wider than a bolt of 10 (ISO 273, medium); the steepest cut is 15°. */
  @Test
  void toolsAreAsWideAsTheirHoles() {
    assertThat(rows(ToolList.of(WALL)))
        .startsWith(
            "tape and square||marking out",
            "saw that tilts|15°|bevels, slanting ends and rips",
            "bit|12 mm|inserts; or the router program",
            "bit|5 mm|clearance holes in the sheet, screws of 4.5 mm, sheet to frame",
            "bit|2.1 mm|pilot holes in softwood, screws of 4.5 mm, sheet to frame",
            "bit|2.3 mm|pilot holes in softwood, screws of 5 mm, brackets and straps",
            "bit|2.1 mm|pilot holes in softwood, screws of 4.5 mm, brackets and straps",
            "bit|11 mm|bolts of 10 mm in timber",
            "spanner and socket|for 10 mm|those bolts");
  }

  /** Sticks of 6000: 4 · 1200 + 1137.351 and four kerfs; the next begins 1137.351 + 3 later. */
  @Test
  void cutsFollowEachOtherByAKerf() {
    StickPlan plan = StickPlan.of(WALL, PriceList.empty());
    assertThat(rows(plan.table()).subList(0, 7))
        .containsExactly(
            "45x90|1|6000|PL1|1200|0",
            "45x90|1|6000|PL2|1200|1203",
            "45x90|1|6000|PL3|1200|2406",
            "45x90|1|6000|PL4|1200|3609",
            "45x90|1|6000|ST4|1137.351|4812",
            "45x90|2|4200|ST5|1137.351|0",
            "45x90|2|4200|ST6|1137.351|1140.351");
  }

  /**
   * Each of two inserts takes 3 screws, the spare one too: 6 and 3. They end 1 mm inside a sheet of
   * 18 mm.
   */
  @Test
  void insertsThatAreScrewedOnTakeScrews() {
    String screwed =
        TEXT.replace(
            "\"none\"",
            "\"lines\"\nkind = \"screw-on\"\nflange-screws = 3\ncolumns = [300]\nrows = [300]\n");
    List<Need> needs =
        new HardwareNeeds(Walls.laidOut(screwed), Environment.INDOORS).needs().subList(0, 3);
    assertThat(needs)
        .extracting(
            want -> want.what() + " " + want.amount().quantity() + " + " + want.amount().spare())
        .containsExactly(
            "T-nut, screwed on 2 + 1",
            "screw for flanges 6 + 3",
            "bolt for a hold, one an insert 2 + 1");
    assertThat(needs.get(1).size()).isEqualTo("at most 17 mm long");
    List<Need> hammered =
        new HardwareNeeds(
                Walls.laidOut(screwed.replace("screw-on", "hammer-in")), Environment.INDOORS)
            .needs();
    assertThat(hammered.get(1).amount().all()).isEqualByComparingTo("0");
  }
}
