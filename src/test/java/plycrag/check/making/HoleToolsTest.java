package plycrag.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** Four holes of 12 mm through 18 mm; the breakthrough is 0.5 mm. */
class HoleToolsTest {
  private static final String BAY = Found.bay("100, 300", "100, 300");
  private static final String ROUTER = "[machine]\nspindle-speed = 18000\nleast-speed = 8000\n";
  private static final String DRILL = "[[tool]]\ndiameter = 12\nlength = 30\n";
  private static final String SLOW = DRILL + "greatest-speed = 4500\n";
  private static final String MILL = "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\n";

  private static Found found(String more) {
    return Found.by("hole-tool", BAY + more);
  }

  private static String taken(String more) {
    return ToolBox.of(Walls.parameters(BAY + more).machine(), List.of(12.0))
        .forHole(12, 18.5)
        .map(Tool::name)
        .orElse("none");
  }

  @Test
  void passesWithoutTools() {
    found("").isNothing();
  }

  @Test
  void passesWithADrillOfTheirDiameter() {
    found(DRILL + MILL).isNothing();
    assertThat(taken(MILL + DRILL)).isEqualTo("drill T2");
  }

  /** A boring bit turns at 4500 rpm at most (from memory), a router no slower than 8000. */
  @Test
  void passesWhereAnEndMillBoresWhatNoDrillMayTurnFor() {
    found(ROUTER + SLOW + MILL).isNothing();
    assertThat(taken(ROUTER + SLOW + MILL)).isEqualTo("end mill T2");
  }

  @Test
  void takesTheWidestEndMillThatLeavesItselfRoom() {
    String wide = MILL.replace("6", "11");
    assertThat(taken(wide + MILL + MILL.replace("6", "4"))).isEqualTo("end mill T2");
  }

  @Test
  void tellsOfHolesWithoutATool() {
    found(DRILL.replace("12", "10"))
        .times(1)
        .isError(true)
        .says(
            "4 holes of 12 mm: no drill of that diameter is told, and no end mill narrow enough to"
                + " bore them")
        .suggests("add a [[tool]] with diameter 12 mm, or a narrower end mill");
  }

  @Test
  void tellsOfAToolDrivenOutsideItsSpeeds() {
    found(ROUTER + SLOW)
        .times(1)
        .isError(true)
        .says(
            "4 holes of 12 mm: drill T1 would turn at 18000 rpm; it bears 100 to 4500 rpm and the"
                + " spindle turns at 8000 to 60000 rpm");
  }

  @Test
  void tellsOfASpindleThatCannotTurnAsAsked() {
    found("[machine]\nleast-speed = 8000\n")
        .times(1)
        .isError(true)
        .says(
            "4 holes of 12 mm: drill T1 would turn at 4000 rpm; it bears 8000 to 60000 rpm and the"
                + " spindle turns at 8000 to 60000 rpm");
  }

  @Test
  void tellsOfADepthBeyondTheTool() {
    found(DRILL.replace("30", "18"))
        .times(1)
        .isError(true)
        .says("4 holes of 12 mm: drill T1 reaches 18 mm deep and 18.5 mm is needed")
        .suggests("take a longer tool, or a smaller [machine] breakthrough");
    found(DRILL.replace("30", "18.5")).isNothing();
  }
}
