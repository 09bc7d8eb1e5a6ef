package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A barrel of 12 mm in sheets of two thicknesses. */
class BarrelAgainstThicknessTest {

  @Test
  void passesWithAMillimetreLeft() {
    Found.by("barrel-thickness", Found.BAY + "[sheet]\nthickness = 13").isNothing();
  }

  @Test
  void findsABarrelThatComesThrough() {
    Found.by("barrel-thickness", Found.BAY + "[sheet]\nthickness = 12")
        .times(1)
        .isError(true)
        .between("", "")
        .measured(0, 1)
        .says(
            "a barrel of 12 mm in a sheet of 12 mm leaves 0 mm to the climbing face;"
                + " 1 mm must remain")
        .suggests("choose an insert with a barrel of at most 11 mm ([inserts] barrel = 11)");
  }

  /** 18 mm less a recess of 5 mm leave just the 13 that such a barrel asks for. */
  @Test
  void findsABarrelThatARecessBringsTooNear() {
    String recessed = Found.BAY + "[inserts]\nrecess-depth = ";
    Found.by("barrel-thickness", recessed + "5").isNothing();
    Found.by("barrel-thickness", recessed + "5.5")
        .times(1)
        .isError(true)
        .measured(0.5, 1)
        .says(
            "a barrel of 12 mm in a recess of 5.5 mm in a sheet of 18 mm leaves 0.5 mm to the"
                + " climbing face; 1 mm must remain")
        .suggests(
            "choose an insert with a barrel of at most 11 mm ([inserts] barrel = 11), or "
                + "make recesses at most 5 mm deep ([inserts] recess-depth = 5)");
    Found.by("barrel-thickness", recessed + "7").times(1).measured(-1, 1);
    Found.by("barrel-thickness", recessed + "5\n[sheet]\nthickness = 12").times(1).measured(-5, 1);
  }
}
