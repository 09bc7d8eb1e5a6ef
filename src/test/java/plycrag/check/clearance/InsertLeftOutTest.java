package plycrag.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.check.Found;

/** What is told of an insert that was left out. */
class InsertLeftOutTest {

  private static final String DROP = "when-blocked = \"drop\"";

  @Test
  void passesWhereNothingIsInTheWay() {
    Found.by("insert-left-out", Found.bay("300, 640", "300", DROP)).isNothing();
  }

  @Test
  void tellsOfAFlangeOverTimber() {
    // 635 - 622.5 - 13 = -0.5
    String toml = Found.bay("300, 635", "300", DROP);
    Found.by("insert-left-out", toml)
        .times(1)
        .isError(false)
        .at(635, 300)
        .between("main 64/30", "ST2")
        .measured(-0.5, 4)
        .says("insert main 64/30 is left out: its flange would be too near to ST2")
        .suggests("");
    CheckedLayout checked = Walls.judged(toml);
    assertThat(checked.isApproved()).isTrue();
    assertThat(checked.layout().facets().get(0).inserts())
        .extracting(insert -> insert.mark())
        .isEqualTo(List.of("main 30/30"));
  }

  @Test
  void leavesOutWhatEachRuleWouldReport() {
    says(Found.bay("640", "300", "bolt-zone = 40", DROP), "its bolt could reach ST2");
    says(
        Found.bay("1203", "300", "setback = 0", "flange = 12", "bolt-zone = 0", DROP)
            + "[clearance]\ninsert-to-timber = 0",
        "its hole would not lie inside one piece");
    says(Found.bay("300, 330", "300", DROP), "its flange would be too near to that of main 30/30");
    says(Found.bay("90", "300", DROP), "it would be nearer to the outline than the setback");
  }

  private static void says(String toml, String reason) {
    Found.by("insert-left-out", toml).times(1);
    assertThat(Found.by("insert-left-out", toml).findings().get(0).sentence()).endsWith(reason);
    assertThat(Walls.judged(toml).isApproved()).isTrue();
  }
}
