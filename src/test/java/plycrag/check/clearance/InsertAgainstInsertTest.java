package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Two flanges of 26 mm that need 10 mm between them. */
class InsertAgainstInsertTest {

  @Test
  void passesAtTheLeastDistance() {
    // 36 - 26 = 10
    Found.by("insert-insert", Found.bay("300, 336", "300")).isNothing();
  }

  @Test
  void findsTwoThatAreTooNear() {
    // 30 - 26 = 4
    Found.by("insert-insert", Found.bay("300, 330", "300"))
        .times(1)
        .isError(true)
        .at(330, 300)
        .between("main 33/30", "main 30/30")
        .measured(4, 10)
        .says("the flange of insert main 33/30 is 4 mm from that of main 30/30; 10 mm must remain")
        .suggests("move column 2 right by 6 mm");
  }

  @Test
  void measuresAslant() {
    // 30 across and 18 up: 34.99 - 26 = 8.99; two pairs across, two up, two aslant
    Found.by("insert-insert", Found.bay("300, 330", "300, 318")).times(6);
    // 30 across and 20 up: 36.06 - 26 = 10.06 is clear aslant
    Found.by("insert-insert", Found.bay("300, 330", "300, 320")).times(4);
  }

  /** Flanges of 60 and 10 between them. */
  @Test
  void tellsOfAScatterThatFlangesDoNotLet() {
    String scatter =
        Found.BAY + "[inserts]\npattern = \"scatter\"\nwhen-blocked = \"drop\"\nflange = 60\n";
    Found.by("insert-insert", scatter + "scatter-spacing = 70\n").isNothing();
    Found.by("insert-insert", scatter + "scatter-spacing = 69\n")
        .times(1)
        .isError(false)
        .measured(69, 70)
        .suggests("scatter them at least as far apart as that ([inserts] scatter-spacing = 70)");
  }

  @Test
  void tellsOfAZoneThatScattersThemTooNear() {
    String zone =
        Found.BAY
            + """
            [inserts]
            when-blocked = "drop"
            flange = 60
            [[zone]]
            name = "warm"
            left = 100
            low = 100
            width = 900
            height = 900
            pattern = "scatter"
            scatter-spacing = %s
            """;
    Found.by("insert-insert", zone.formatted("70")).isNothing();
    Found.by("insert-insert", zone.formatted("69"))
        .times(1)
        .isError(false)
        .measured(69, 70)
        .suggests("scatter them at least as far apart as that ([[zone]] scatter-spacing = 70)");
  }

  @Test
  void findsTwoInOnePlace() {
    // both columns are marked at 100 mm
    Found.by("insert-insert", Found.bay("100, 100.3", "300")).times(1).measured(-26, 10);
  }
}
