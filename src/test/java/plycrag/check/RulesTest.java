package plycrag.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.clearance.SeamBacked;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Role;

/**
 * Every rule with a wall that passes and one that fails, its measures worked by hand. The passing
 * wall is the same for all: 1200 × 1200 mm on studs at 0–45, 377.5–422.5, 777.5–822.5 and
 * 1155–1200, plates at 0–45 and 1155–1200.
 */
class RulesTest {
  private static final String FACET = "[[facet]]\nwidth = 1200\nlength = 1200\n";
  private static final String LINES =
      "[inserts]\npattern = \"lines\"\ncolumns = [100, 200]\nrows = [100, 200]\nsetback = 50\n";

  private static List<Finding> of(String rule, String toml) {
    return Walls.judged(toml).findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .toList();
  }

  private static Finding only(String rule, String toml) {
    List<Finding> findings = of(rule, toml);
    assertThat(findings).as(rule).hasSize(1);
    return findings.get(0);
  }

  private static void measures(Finding finding, double found, double required) {
    assertThat(finding.measure().orElseThrow().found()).isCloseTo(found, within(1e-6));
    assertThat(finding.measure().orElseThrow().required()).isCloseTo(required, within(1e-6));
  }

  @Test
  void aGoodWallPassesThemAll() {
    assertThat(Walls.judged(FACET + LINES).findings()).isEmpty();
  }

  @Test
  void everyRuleHasANameAndAPromise() {
    List<String> names = Inspection.rules().stream().map(Rule::name).toList();
    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
    assertThat(Inspection.rules()).allMatch(rule -> rule.promise().endsWith("."));
  }

  /** 377.5 − 365 − 13 = −0.5; to clear by 4 it must go to 360. */
  @Test
  void insertAgainstTimber() {
    Finding finding =
        only(
            "insert-timber",
            FACET
                + LINES
                    .replace("[100, 200]\nr", "[100, 365]\nr")
                    .replace("rows = [100, 200]", "rows = [200]"));
    assertThat(finding.first()).isEqualTo("main 37/20");
    assertThat(finding.second()).isEqualTo("ST2");
    measures(finding, -0.5, 4);
    assertThat(finding.suggestion())
        .isEqualTo("move column 2 left by 5 mm, or stud ST2 right by 5 mm");
  }

  /** A bolt zone of 40 reaches 377.5 − 355 − 20 = 2.5 mm from the stud, where 6 are asked. */
  @Test
  void boltZoneAgainstTimber() {
    String wall =
        FACET
            + LINES
                .replace("columns = [100, 200]", "columns = [355]")
                .replace("rows = [100, 200]", "rows = [200]")
            + "bolt-zone = 40\n[clearance]\nbolt-to-timber = 6\n";
    Finding finding = only("insert-timber", wall);
    measures(finding, 2.5, 6);
    assertThat(finding.sentence())
        .startsWith("the bolt zone of insert main 36/20 is 2.5 mm from stud ST2");
  }

  /** The seam's edge is at 1220; 1220 − 1195 − 13 = 12 passes, one more fails. */
  @Test
  void insertAgainstEdge() {
    String wall = "[[facet]]\nwidth = 2400\nlength = 1200\n[sheet]\nlay = \"up\"\n" + LINES;
    String passing = wall.replace("columns = [100, 200]", "columns = [1195]");
    assertThat(of("insert-edge", passing)).isEmpty();
    String failing = wall.replace("columns = [100, 200]", "columns = [1196]");
    List<Finding> findings = of("insert-edge", failing);
    assertThat(findings).hasSize(2);
    measures(findings.get(0), 11, 12);
    assertThat(findings.get(0).second()).isEqualTo("P1");
  }

  /** Across the gap at 1220 to 1222 a hole lies in no piece, beside it in one but not wholly. */
  @Test
  void holeOutsidePiece() {
    String wall = "[[facet]]\nwidth = 2400\nlength = 1200\n[sheet]\nlay = \"up\"\n" + LINES;
    List<Finding> inGap =
        of("hole-outside", wall.replace("columns = [100, 200]", "columns = [1221]"));
    assertThat(inGap).hasSize(2).allMatch(one -> one.sentence().contains("lies in no piece"));
    List<Finding> across =
        of("hole-outside", wall.replace("columns = [100, 200]", "columns = [1217]"));
    assertThat(across).hasSize(2);
    measures(across.get(0), -3, 0);
  }

  @Test
  void setback() {
    List<Finding> findings = of("setback", FACET + LINES.replace("setback = 50", "setback = 101"));
    assertThat(findings).hasSize(3);
    measures(findings.get(0), 100, 101);
    assertThat(findings.get(0).suggestion()).startsWith("move it inward by 1 mm");
  }

  /** 135 − 100 − 26 = 9. */
  @Test
  void insertAgainstInsert() {
    String wall =
        FACET
            + LINES
                .replace("columns = [100, 200]", "columns = [100, 135]")
                .replace("rows = [100, 200]", "rows = [200]");
    Finding finding = only("insert-insert", wall);
    measures(finding, 9, 10);
    assertThat(finding.suggestion()).isEqualTo("move column 2 right by 1 mm");
  }

  @Test
  void twoInsertsInOnePlaceAreFound() {
    String wall =
        FACET
            + LINES
                .replace("columns = [100, 200]", "columns = [100, 100.3]")
                .replace("rows = [100, 200]", "rows = [200]");
    measures(only("insert-insert", wall), -26, 10);
  }

  /** A screw of the edge stud stands at 22, 226; an insert at 62, 226 leaves 40 − 13 − 2.25. */
  @Test
  void screwAgainstInsert() {
    String wall =
        FACET
            + LINES.replace("columns = [100, 200]", "columns = [62]").replace("[100, 200]", "[226]")
            + "[clearance]\nscrew-to-insert = ";
    assertThat(of("screw-insert", wall + "24.75")).isEmpty();
    Finding finding = only("screw-insert", wall + "40");
    measures(finding, 24.75, 40);
    assertThat(finding.second()).isEqualTo("main 2/23");
    assertThat(finding.suggestion()).isEqualTo("move column 1 right by 16 mm");
  }

  /**
   * A shared stud of 45 on a seam of 2 bears 21.5: 11.75 is left on either side, 13.5 are asked.
   */
  @Test
  void screwAgainstSheetEdgeAndMemberEdge() {
    String wall =
        "[[facet]]\nwidth = 2400\nlength = 1200\n[sheet]\nlay = \"up\"\n[frame]\nseams = \"shared\"\n"
            + LINES;
    List<Finding> sheet = of("screw-sheet-edge", wall);
    List<Finding> member = of("screw-member-edge", wall);
    assertThat(sheet).isNotEmpty();
    assertThat(member).isNotEmpty();
    measures(sheet.get(0), 11, 13.5);
    String thin = wall + "[screws]\ndiameter = 3.5\nlength = 45\n";
    assertThat(of("screw-sheet-edge", thin)).isEmpty();
    assertThat(of("screw-member-edge", thin)).isEmpty();
  }

  /** Blocking between studs at 0–45 and 104.5–149.5 is 59.5 long: 29.75 to each end, 42 asked. */
  @Test
  void screwAgainstMemberEnd() {
    String wall =
        "[[facet]]\nwidth = 380\nlength = 1300\n[sheet]\nlay = \"across\"\n[frame]\nstud-spacing = 150\n[screws]\ndiameter = 6\n";
    List<Finding> findings = of("screw-member-end", wall);
    assertThat(findings).isNotEmpty().allMatch(one -> one.second().startsWith("BL"));
    measures(findings.get(0), 29.5, 42);
    assertThat(of("screw-member-end", wall.replace("150", "400"))).isEmpty();
  }

  /** Without its blocking, a seam across three bays of 332.5, 355 and 332.5 hangs in the air. */
  @Test
  void seamBacked() {
    Layout layout =
        Walls.laidOut("[[facet]]\nwidth = 1200\nlength = 2400\n[sheet]\nlay = \"across\"\n");
    assertThat(new SeamBacked().findings(layout)).isEmpty();
    FacetLayout facet = layout.facets().get(0);
    FacetLayout bare =
        new FacetLayout(
            facet.facet(),
            facet.footing(),
            facet.pieces(),
            facet.seams(),
            facet.members().stream().filter(one -> one.role() != Role.BLOCKING).toList(),
            facet.fastenerLines(),
            facet.inserts(),
            facet.omissions());
    List<Finding> findings =
        new SeamBacked().findings(new Layout(layout.wall(), List.of(bare), layout.sheets()));
    assertThat(findings).hasSize(6);
    assertThat(findings.stream().map(one -> -one.measure().orElseThrow().found()))
        .containsOnly(332.5, 355.0);
  }

  /** A seam at 1221 has its upper blocking up to 1266; the plate of 1282 begins at 1237. */
  @Test
  void membersOverlap() {
    String wall =
        "[[facet]]\nwidth = 1200\nlength = 1282\n[sheet]\nlay = \"across\"\nleast-width = ";
    assertThat(of("members-overlap", wall + "300")).isEmpty();
    List<Finding> findings = of("members-overlap", wall + "50");
    assertThat(findings).hasSize(3).allMatch(one -> one.second().equals("PL2"));
    measures(findings.get(0), -29, 0);
  }

  @Test
  void barrelAgainstThickness() {
    assertThat(of("barrel-thickness", FACET + LINES + "barrel = 17\n")).isEmpty();
    Finding finding = only("barrel-thickness", FACET + LINES + "barrel = 17.5\n");
    measures(finding, 0.5, 1);
    assertThat(finding.suggestion()).endsWith("at most 17 mm");
  }

  /** 18 + 6 × 4.5 = 45 is the least; 18 + 90 − 5 = 103 the most. */
  @Test
  void screwLength() {
    assertThat(of("screw-length", FACET + LINES + "[screws]\nlength = 45\n")).isEmpty();
    Finding tooShort = only("screw-length", FACET + LINES + "[screws]\nlength = 44\n");
    measures(tooShort, 26, 27);
    assertThat(tooShort.suggestion()).endsWith("at least 45 mm");
    assertThat(of("screw-length", FACET + LINES + "[screws]\nlength = 103\n")).isEmpty();
    Finding tooLong = only("screw-length", FACET + LINES + "[screws]\nlength = 104\n");
    measures(tooLong, 4, 5);
    assertThat(tooLong.suggestion()).endsWith("at most 103 mm");
  }

  @Test
  void memberWithinStock() {
    String wall = "[[facet]]\nwidth = 1200\nlength = 2400\n" + LINES;
    assertThat(of("member-stock", wall)).isEmpty();
    List<Finding> findings = of("member-stock", wall + "[stock]\nlengths = [2000]\n");
    assertThat(findings).isNotEmpty().allMatch(one -> one.first().startsWith("ST"));
    measures(findings.get(0), 2000 - 2310, 0);
  }

  /** A slab at −10°: the frame's back arris lies (18 + 90) sin 10° = 18.754 mm low. */
  @Test
  void plateOnFloor() {
    String slab = FACET + "angle = -10\n";
    Finding inFloor = only("plate-floor", slab + LINES);
    assertThat(inFloor.severity()).isEqualTo(Severity.ERROR);
    assertThat(inFloor.measure().orElseThrow().found()).isCloseTo(-18.754, within(0.001));
    assertThat(inFloor.suggestion()).contains("at least 19 mm");
    assertThat(of("plate-floor", "[wall]\nraise = 19\n" + slab + LINES)).isEmpty();
    Finding packed = only("plate-floor", "[wall]\nraise = 30\n" + FACET + LINES);
    assertThat(packed.severity()).isEqualTo(Severity.WARNING);
    measures(packed, 30, 0);
    assertThat(packed.suggestion()).contains("at least 45 mm");
    assertThat(of("plate-floor", "[wall]\nraise = 45\n" + FACET + LINES)).isEmpty();
  }

  @Test
  void insertsFit() {
    String wall = FACET + "[inserts]\nsetback = 700\n";
    assertThat(only("no-inserts", wall).severity()).isEqualTo(Severity.WARNING);
  }

  @Test
  void insertLeftOut() {
    String wall =
        FACET
            + LINES.replace("columns = [100, 200]", "columns = [100, 400]")
            + "when-blocked = \"drop\"\n";
    List<Finding> findings = of("insert-left-out", wall);
    assertThat(findings).hasSize(2).allMatch(one -> one.severity() == Severity.WARNING);
    assertThat(findings.get(0).second()).isEqualTo("ST2");
    assertThat(Walls.judged(wall).isApproved()).isTrue();
  }

  /** What is left out and what the rules would report are the same inserts. */
  @Test
  void droppingLeavesNothingToReport() {
    String grid = FACET + "[inserts]\npitch-across = 70\npitch-up = 70\nsetback = 60\n";
    CheckedLayout dropped = Walls.judged(grid + "when-blocked = \"drop\"\n");
    assertThat(dropped.isApproved()).isTrue();
    List<String> left =
        dropped.findings().stream().map(Finding::first).distinct().sorted().toList();
    List<String> reported =
        Walls.judged(grid).findings().stream()
            .filter(Finding::isError)
            .map(Finding::first)
            .distinct()
            .sorted()
            .toList();
    assertThat(left).isNotEmpty().isEqualTo(reported);
  }
}
