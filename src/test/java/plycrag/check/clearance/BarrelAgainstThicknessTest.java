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
        .suggests("choose an insert with a barrel of at most 11 mm");
  }
}
