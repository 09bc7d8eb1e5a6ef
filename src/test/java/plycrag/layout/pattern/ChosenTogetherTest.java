package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import plycrag.OutlineTexts;
import plycrag.WallTexts;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Axis;

/** Columns, rows, studs and blocking that are chosen together, on whole walls. */
class ChosenTogetherTest {
  /** Rules that a blocked insert would break. */
  private static final Set<String> INSERT_RULES =
      Set.of(
          "insert-timber",
          "insert-edge",
          "insert-insert",
          "hole-outside",
          "setback",
          "screw-insert");

  /** One sheet with plates at both ends and a stud in its middle. */
  private static final String SHEET =
      """
      [[facet]]
      width = 1200
      length = 2400
      [sheet]
      width = 1200
      length = 2400
      [frame]
      section = [45, 90]
      stud-spacing = 600
      [inserts]
      pattern = "lines"
      columns = [100, 350, 600, 850, 1100]
      rows = [100, 350, 600, 850, 1100, 1350, 1600, 1850, 2100, 2350]
      setback = 40
      flange = 26
      [clearance]
      insert-to-timber = 4.5
      """;

  private static String blocked(String toml, String mode) {
    return toml.replace("[inserts]", "[inserts]\nwhen-blocked = \"" + mode + "\"");
  }

  private static FacetLayout facet(String toml) {
    return Walls.laidOut(toml).facets().get(0);
  }

  private static List<Double> places(FacetLayout facet, Axis lines) {
    return facet.inserts().stream()
        .map(insert -> lines == Axis.UP ? insert.centre().getX() : insert.centre().getY())
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * Common practice, no source: the column at 600 moves by 22.5 + 13 + 4.5 = 40 mm, of two ways as
   * short to the left, and the row at 2350 to 2400 - 45 - 13 - 4.5 = 2337.5 before rounding.
   */
  @Example
  void nudgingMovesTheColumnAtTheStudAndTheRowAtThePlate() {
    FacetLayout nudged = facet(blocked(SHEET, "nudge"));
    assertThat(places(nudged, Axis.UP)).containsExactly(100.0, 350.0, 560.0, 850.0, 1100.0);
    assertThat(places(nudged, Axis.ACROSS))
        .containsExactly(
            100.0, 350.0, 600.0, 850.0, 1100.0, 1350.0, 1600.0, 1850.0, 2100.0, 2337.0);
    assertThat(nudged.omissions()).isEmpty();
  }

  /**
   * Within 640 mm of the studs at both edges the middle one may stand from 537.5 to 662.5, and 40
   * mm beside the column is enough: no column moves.
   */
  @Example
  void solvingMovesTheStudInstead() {
    FacetLayout solved = facet(blocked(SHEET.replace("= 600\n", "= 640\n"), "solve"));
    assertThat(solved.omissions()).isEmpty();
    assertThat(places(solved, Axis.UP)).containsExactly(100.0, 350.0, 600.0, 850.0, 1100.0);
    PatternOutcome.OfAxis columns = solved.settings().get(0).axes().get(0);
    assertThat(columns.members()).containsExactly(600.0);
    assertThat(columns.settled()).hasSize(1).allMatch(stud -> Math.abs(stud - 600) >= 40);
  }

  @Example
  void tellsWhatStoodInTheWay() {
    PatternOutcome setting = facet(blocked(SHEET, "nudge")).settings().get(0);
    assertThat(setting.asked()).isEqualTo(50);
    // the column of ten and the row of five share one insert
    assertThat(setting.blocked()).isEqualTo(14);
    assertThat(setting.axes().get(0).moves()).hasSize(1);
    PatternOutcome.LineMove column = setting.axes().get(0).moves().get(0);
    assertThat(column.number()).isEqualTo(3);
    assertThat(column.move()).isEqualTo(-40);
    assertThat(column.blockers().get(0).name()).isEqualTo("the stud at 600 mm");
    assertThat(column.blockers().get(0).shortfall()).isEqualTo(40);
  }

  /** A rake that slants behind the corner of two walls lies behind no column all along. */
  @Example
  void timberThatSlantsPastACornerIsInTheWayOfNoWholeColumn() {
    assertThat(Walls.sample(Path.of("params", "rigger-nook.toml")).facets())
        .allSatisfy(
            facet ->
                assertThat(facet.settings().get(0).axes().get(0).moves())
                    .flatExtracting(PatternOutcome.LineMove::blockers)
                    .noneMatch(one -> one.name().contains("rake")));
  }

  /** Four inserts of a column lie beside the window's short trimmer, the others are free. */
  @Example
  void aLineThatIsBlockedInPartKeepsTheRest() {
    String toml =
        """
        [[facet]]
        width = 1200
        length = 1200
        [[cutout]]
        name = "socket"
        left = 200
        low = 400
        width = 160
        height = 200
        [frame]
        stud-spacing = 600
        [inserts]
        pattern = "lines"
        columns = [400]
        rows = [100, 300, 500, 700, 900, 1100]
        greatest-move = 0
        """;
    FacetLayout facet = facet(toml);
    assertThat(facet.omissions()).isNotEmpty().hasSizeLessThan(6);
    assertThat(facet.inserts()).isNotEmpty();
  }

  @Provide
  Arbitrary<String> walls() {
    return WallTexts.any();
  }

  @Provide
  Arbitrary<String> outlines() {
    return OutlineTexts.any();
  }

  /** All that holds for a way is asked of one layout, since laying out is what takes time. */
  @Property(tries = 80)
  void whicheverWayIsChosen(@ForAll("walls") String toml) {
    Map<String, Layout> layouts = new LinkedHashMap<>();
    for (String mode : List.of("shift", "nudge", "drop", "solve")) {
      layouts.put(mode, Walls.laidOut(blocked(toml, mode)));
    }
    layouts.values().forEach(ChosenTogetherTest::noInsertThatIsKeptIsBlocked);
    layouts.values().forEach(ChosenTogetherTest::noLineMovesFurtherThanItMay);
    Layout solved = layouts.get("solve");
    studsKeepTheirSpacing(solved);
    assertThat(layouts.values()).allMatch(other -> lost(solved) <= lost(other));
  }

  private static int lost(Layout layout) {
    return layout.facets().get(0).omissions().size();
  }

  private static void noInsertThatIsKeptIsBlocked(Layout layout) {
    assertThat(
            Inspection.of(layout).findings().stream()
                .filter(one -> one.severity() == Severity.ERROR)
                .map(Finding::rule))
        .doesNotContainAnyElementsOf(INSERT_RULES);
  }

  private static void noLineMovesFurtherThanItMay(Layout layout) {
    for (PatternOutcome.OfAxis axis : layout.facets().get(0).settings().get(0).axes()) {
      assertThat(axis.moves())
          .allMatch(
              move ->
                  Math.abs(move.move()) <= layout.wall().inserts().blocked().greatestMove() + 1e-6);
    }
  }

  private static void studsKeepTheirSpacing(Layout layout) {
    List<Double> middles =
        layout.members().stream()
            .filter(member -> member.role() == MemberRole.STUD)
            .map(member -> Axis.ACROSS.middle(member.box()))
            .sorted()
            .toList();
    double most = layout.wall().frame().studSpacing();
    for (int next = 1; next < middles.size(); next++) {
      assertThat(middles.get(next) - middles.get(next - 1)).isLessThanOrEqualTo(most + 1e-3);
    }
  }

  @Property(tries = 40)
  void theSameTextIsSolvedTheSame(@ForAll("walls") String toml) {
    assertThat(Walls.laidOut(blocked(toml, "solve")))
        .isEqualTo(Walls.laidOut(blocked(toml, "solve")));
  }

  @Property(tries = 40)
  void noInsertIsBlockedOnOtherShapesEither(@ForAll("outlines") String toml) {
    String solved = toml.replaceFirst("when-blocked = .*", "when-blocked = \"solve\"");
    assertThat(
            Inspection.of(Walls.laidOut(solved)).findings().stream()
                .filter(one -> one.severity() == Severity.ERROR)
                .map(Finding::rule))
        .doesNotContainAnyElementsOf(INSERT_RULES);
  }
}
