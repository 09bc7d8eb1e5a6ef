package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A hole of 12 mm against the sheet's edge. */
class HoleOutsidePieceTest {

  @Test
  void passesWhereItTouchesTheEdge() {
    Found.by("hole-outside", Found.bay("6", "300", "setback = 0")).isNothing();
  }

  @Test
  void findsAHoleAcrossTheEdge() {
    // 4 - 6 = -2
    Found.by("hole-outside", Found.bay("4", "300", "setback = 0"))
        .times(1)
        .isError(true)
        .at(4, 300)
        .between("main 0/30", "P1")
        .measured(-2, 0)
        .suggests("move it inward by 2 mm or more");
  }

  @Test
  void findsAHoleBesideTheWall() {
    Found.by("hole-outside", Found.bay("1300", "300", "setback = 0"))
        .times(1)
        .between("main 130/30", "")
        .says("the hole of insert main 130/30 lies in no piece");
  }

  @Test
  void findsAHoleInASeam() {
    // pieces end at 600 and begin at 602; the hole's rim reaches over both edges
    String seamed = Found.bay("601", "300", "[sheet]", "length = 600", "width = 600");
    Found.by("hole-outside", seamed).times(1).between("main 60/30", "").isError(true);
  }
}
