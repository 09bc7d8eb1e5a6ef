package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;

/** A screw of 4.5 mm passes through a hole of 5 mm; off unless it is asked for. */
class ScrewHolesTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 250]
      [nesting]
      face-up = "back"
      [machine]
      screw-holes = "%s"
      """;

  private static ApprovedLayout approved(String screws) {
    return (ApprovedLayout) Walls.judged(WALL.formatted(screws));
  }

  @Test
  void areLeftToTheHandUnlessAskedFor() {
    assertThat(approved("none").layout().holes())
        .hasSize(4)
        .allMatch(hole -> hole.kind() == Kind.INSERT);
  }

  /** The back lies up: what is u across on the wall is the piece's width less u on the sheet. */
  @Test
  void areDrilledForEveryScrewWhereItStands() {
    ApprovedLayout approved = approved("through");
    LaidSheet sheet = approved.layout().sheets().get(0);
    List<Screw> screws = approved.layout().screws();
    assertThat(screws).isNotEmpty();
    assertThat(sheet.inserts()).hasSize(4);
    assertThat(sheet.holes()).hasSize(4 + screws.size());
    for (Screw screw : screws) {
      assertThat(sheet.holes())
          .filteredOn(hole -> hole.mark().equals(screw.mark()))
          .singleElement()
          .satisfies(hole -> stands(hole, screw));
    }
  }

  private static void stands(MachinedHole hole, Screw screw) {
    assertThat(hole.kind().word()).isEqualTo("screw");
    assertThat(hole.bore().diameter()).isEqualTo(5);
    assertThat(hole.bore().depth()).isEqualTo(18);
    assertThat(hole.spot().x()).isEqualTo(1200 - screw.centre().getX());
    assertThat(hole.spot().y()).isEqualTo(screw.centre().getY());
  }

  /** A head of 9 mm in a cone of 90° goes 4.5 mm deep, once over every screw's hole, after it. */
  @Test
  void haveTheirHeadsLetInWhereAskedFor() {
    String tools =
        """
        [[tool]]
        diameter = 5
        length = 30
        [[tool]]
        kind = "countersink"
        diameter = 12
        length = 10
        [[tool]]
        diameter = 12
        length = 30
        """;
    String toml = WALL.formatted("countersunk").replace("\"back\"", "\"front\"") + tools;
    ApprovedLayout approved = (ApprovedLayout) Walls.judged(toml);
    List<MachinedHole> sunk =
        approved.layout().holes().stream().filter(hole -> hole.kind() == Kind.COUNTERSINK).toList();
    assertThat(sunk)
        .hasSameSizeAs(approved.layout().screws())
        .allMatch(
            hole -> hole.bore().diameter() == 9 && Math.abs(hole.bore().depth() - 4.5) < 1e-9);
    List<DrillProgram> programs = DrillPrograms.of(approved);
    assertThat(programs).extracting(DrillProgram::tool).containsExactly(1, 3, 2);
    assertThat(programs.get(2).remarks()).contains("Tool T2, countersink, diameter 12, 90 degrees");
    assertThat(programs.get(2).moves().stream().filter(Move.DrillCycle.class::isInstance))
        .hasSameSizeAs(sunk)
        .allMatch(move -> Math.abs(((Move.DrillCycle) move).bottom() - 13.5) < 1e-9);
  }

  /** Tools count by diameter, the screws' first. */
  @Test
  void haveAProgramOfTheirOwn() {
    ApprovedLayout approved = approved("through");
    List<DrillProgram> programs = DrillPrograms.of(approved);
    assertThat(programs).hasSize(2);
    assertThat(programs.get(0).moves().stream().filter(Move.DrillCycle.class::isInstance))
        .hasSize(approved.layout().screws().size());
    assertThat(programs.get(1).moves().stream().filter(Move.DrillCycle.class::isInstance))
        .hasSize(4);
  }
}
