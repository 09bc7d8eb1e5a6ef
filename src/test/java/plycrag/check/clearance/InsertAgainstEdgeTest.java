package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** The flange, 13 mm in radius, against the sheet's edge. */
class InsertAgainstEdgeTest {

  @Test
  void passesAtTheLeastDistance() {
    // 25 - 13 = 12
    Found.by("insert-edge", Found.bay("25", "300", "setback = 0")).isNothing();
  }

  @Test
  void findsAFlangeNearTheEdge() {
    // 20 - 13 = 7, 5 short of 12
    Found.by("insert-edge", Found.bay("20", "300", "setback = 0"))
        .times(1)
        .isError(true)
        .at(20, 300)
        .between("main 2/30", "P1")
        .measured(7, 12)
        .says("the flange of insert main 2/30 is 7 mm from the edge of piece P1; 12 mm must remain")
        .suggests("move it inward by 5 mm");
  }

  @Test
  void leavesHolesAcrossTheEdgeToTheirOwnRule() {
    Found.by("insert-edge", Found.bay("5", "300", "setback = 0")).isNothing();
  }

  @Test
  void countsTheEdgesAtASeam() {
    // P1 ends at 600: 600 - 575 - 13 = 12 passes, one more does not
    String seamed = "[sheet]\nlength = 600\nwidth = 600\n";
    Found.by("insert-edge", Found.bay("575", "300", seamed)).isNothing();
    Found.by("insert-edge", Found.bay("576", "300", seamed)).times(1).measured(11, 12);
  }
}
