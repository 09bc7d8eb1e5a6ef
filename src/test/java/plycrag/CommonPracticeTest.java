package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import plycrag.check.CheckedLayout;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.LayoutPlan;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Screw;
import plycrag.read.ParameterFile;
import plycrag.read.WallMaker;

/**
 * One wall as practitioners build it: a 2400 × 1200 sheet laid up on 45 × 90 timber, its lower edge
 * raised 345 mm. The figures are common practice, no source.
 */
class CommonPracticeTest {
  private static final String WALL = "must-fail/layout/top-row-in-plate.toml";

  private final CheckedLayout checked = judged(TestFiles.text(WALL));
  private final FacetLayout facet = checked.layout().facets().get(0);

  private static CheckedLayout judged(String text) {
    return Inspection.of(
        LayoutPlan.of(
            WallMaker.of(
                ParameterFile.read("wall.toml", TestFiles.bytes(text)).value().orElseThrow(),
                List.of())));
  }

  @Test
  void standsAsHighAsSheetAndRaise() {
    assertThat(facet.facet().overallHeight()).isEqualTo(2745);
    assertThat(facet.footing().plateLow()).isEqualTo(-345);
    assertThat(facet.footing().packing()).isEqualTo(0);
  }

  @Test
  void hasThreeStudsTwoPlatesAndTwoPiecesOfBlocking() {
    assertThat(lengths(MemberRole.STUD)).containsExactly(2655.0, 2655.0, 2655.0);
    assertThat(lengths(MemberRole.PLATE)).containsExactly(1200.0, 1200.0);
    assertThat(lengths(MemberRole.BLOCKING)).containsExactly(532.5, 532.5);
    assertThat(member("BL1").box().getMinY()).isEqualTo(0);
    assertThat(member("BL1").box().getMaxY()).isEqualTo(45);
  }

  @Test
  void aStudAPlateAndABlockingUseMostOfOneLength() {
    double used = member("ST1").length() + member("PL1").length() + member("BL1").length();
    assertThat(used).isEqualTo(4387.5).isLessThan(4500);
  }

  @Test
  void screwsStandOnTheStudsMiddle() {
    Map<String, Double> lines = new TreeMap<>();
    for (Screw screw : facet.screws()) {
      lines.put(screw.member(), screw.centre().getX());
    }
    assertThat(lines.get("ST1")).isEqualTo(22).isCloseTo(22.5, within(0.5));
    assertThat(lines.get("ST2")).isEqualTo(600);
    assertThat(lines.get("ST3")).isEqualTo(1200 - 22).isCloseTo(1177.5, within(0.5));
  }

  @Test
  void hasFiftyInsertsInTwelveMillimetreHoles() {
    assertThat(checked.layout().holes()).hasSize(50).allMatch(hole -> hole.bore().diameter() == 12);
  }

  @Test
  void eachInsertOfTheTopRowFoulsTheTopPlateAndNothingElseIsWrong() {
    assertThat(checked.isApproved()).isFalse();
    assertThat(checked.findings())
        .hasSize(5)
        .allMatch(one -> one.rule().equals("insert-timber"))
        .allMatch(one -> one.second().equals("PL2"))
        .allMatch(one -> one.measure().orElseThrow().found() == -8)
        .extracting(Finding::first)
        .containsExactly(
            "main 10/235", "main 30/235", "main 56/235", "main 85/235", "main 110/235");
  }

  @Test
  void aColumnOnTheMiddleStudFoulsIt() {
    String text =
        TestFiles.text(WALL).replace("300, 560, 850", "300, 600, 850").replace(", 2350]", "]");
    List<Finding> findings =
        judged(text).findings().stream().filter(one -> one.rule().equals("insert-timber")).toList();
    assertThat(findings).hasSize(9);
    assertThat(findings.get(0).second()).isEqualTo("ST2");
    assertThat(findings.get(0).measure().orElseThrow().found()).isEqualTo(-35.5);
    assertThat(findings.get(0).suggestion())
        .isEqualTo("move column 3 left by 40 mm, or stud ST2 right by 40 mm");
  }

  /** 577.5 − 560 − 13 = 4.5: it clears at 4.5 mm and not at 4.6. */
  @Test
  void aColumnAt560ClearsTheMiddleStudByFourAndAHalf() {
    String text =
        TestFiles.text(WALL).replace(", 2350]", "]") + "\n[clearance]\ninsert-to-timber = ";
    assertThat(judged(text + "4.5").findings()).isEmpty();
    assertThat(judged(text + "4.6").findings())
        .hasSize(9)
        .allMatch(one -> one.measure().orElseThrow().found() == 4.5);
  }

  @Test
  void droppingLeavesTheTopRowOutAndSaysSo() {
    String text = TestFiles.text(WALL).replace("\"report\"", "\"drop\"");
    CheckedLayout dropped = judged(text);
    assertThat(dropped.isApproved()).isTrue();
    assertThat(dropped.layout().holes()).hasSize(45);
    assertThat(dropped.findings()).hasSize(5).allMatch(one -> !one.isError());
  }

  private List<Double> lengths(MemberRole role) {
    return facet.members().stream()
        .filter(member -> member.role() == role)
        .map(Member::length)
        .toList();
  }

  private Member member(String mark) {
    return facet.members().stream()
        .filter(member -> member.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }
}
