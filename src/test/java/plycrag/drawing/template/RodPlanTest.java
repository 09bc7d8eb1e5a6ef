package plycrag.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.standing.SheetDatum;

class RodPlanTest {
  private static Optional<RodPlan> plan(String inserts) {
    Layout layout =
        Walls.laidOut(
            """
            [[facet]]
            width = 2440
            length = 1220
            [inserts]
            when-blocked = "report"
            """
                + inserts);
    LaidSheet sheet = layout.sheets().get(0);
    return RodPlan.of(sheet, SheetDatum.of(layout, sheet));
  }

  /** Five columns at no pitch, four rows at none: nine readings for twenty holes. */
  @Test
  void columnsAndRowsAtNoPitchTakeTwoRods() {
    RodPlan plan =
        plan("pattern = \"lines\"\ncolumns = [130, 400, 711, 950, 1303]\nrows = [120, 300, 555, 900]")
            .orElseThrow();
    assertThat(plan.byRows()).isTrue();
    assertThat(plan.lines()).containsExactly(120.0, 300.0, 555.0, 900.0);
    assertThat(plan.rods())
        .containsExactly(
            new RodPlan.Rod(
                List.of(130.0, 400.0, 711.0, 950.0, 1303.0), List.of(120.0, 300.0, 555.0, 900.0)));
  }

  /** Every second row is shifted: each kind has its rod. */
  @Test
  void anOffsetGridTakesARodForEachKindOfRow() {
    RodPlan plan = plan("pattern = \"offset\"\npitch-across = 200\npitch-up = 200").orElseThrow();
    assertThat(plan.rods()).hasSize(2);
    assertThat(plan.rods().get(0).lines()).doesNotContainAnyElementsOf(plan.rods().get(1).lines());
  }

  /** A scatter shares nothing. */
  @Test
  void aScatterTakesNone() {
    assertThat(plan("pattern = \"scatter\"\nscatter-spacing = 200")).isEmpty();
  }

  /** Four holes are marked as quickly with a tape. */
  @Test
  void aFewHolesTakeNone() {
    assertThat(plan("pattern = \"lines\"\ncolumns = [300, 700]\nrows = [300, 700]")).isEmpty();
  }
}
