package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class InsertInFrontTest {
  /** A wall across a narrow one from another, which leans over toward it. */
  private static final String FACING =
      """
      [[facet]]
      name = "port"
      width = 600
      length = 900
      [[facet]]
      name = "between"
      beside = "port"
      turn = 90
      width = %s
      length = 900
      [[facet]]
      name = "starboard"
      beside = "between"
      turn = 90
      angle = 30
      width = 600
      length = 900
      [inserts]
      pattern = "lines"
      columns = [300]
      rows = [300, 500]
      when-blocked = "report"
      """;

  private static final String STEEP =
      """
      [wall]
      raise = %s
      [[facet]]
      name = "main"
      angle = 45
      length = 900
      width = 600
      [inserts]
      pattern = "lines"
      columns = [300]
      rows = [100, 300]
      when-blocked = "report"
      %s
      """;

  @Test
  void passesWhereTheOtherWallIsFarEnough() {
    Found.by("insert-front", FACING.formatted(1200)).isNothing();
  }

  /**
   * At a height of z the other wall stands z · tan 30° nearer than 400 mm: 226.8 mm are left at 300
   * mm, 111.3 mm at 500 mm. From the other's upper insert, 500 · sin 30° = 250 mm nearer, the way
   * down by 30° to the first is 150 mm over cos 30°, 173.2 mm.
   */
  @Test
  void findsAWallNearerThanAHand() {
    Found.by("insert-front", FACING.formatted(400))
        .times(1)
        .isError(true)
        .between("port 30/50", "starboard")
        .measured(111, 150)
        .says(
            "port 30/50 has facet starboard nearer before it than a hold and a hand need; 150 mm"
                + " must remain");
  }

  /**
   * The face leans over by 45°: 150 mm before it is 106.1 mm lower, and 100 mm up it 70.7 mm high.
   */
  @Test
  void warnsOfTheFloor() {
    Found.by("insert-front", STEEP.formatted(0, ""))
        .times(1)
        .isError(false)
        .at(300, 100)
        .says("main 30/10 has no room for a hold and a hand above the floor");
    Found.by("insert-front", STEEP.formatted(36, "")).isNothing();
  }

  /** The upper insert is 212.1 mm high; its hold reaches down to 106.1 mm. */
  @Test
  void warnsOfMats() {
    Found.by("insert-front", STEEP.formatted(0, "[mat]\nthickness = 110"))
        .times(1)
        .at(300, 300)
        .says("main 30/30 has no room for a hold and a hand above the mats");
  }

  /**
   * A slab that leans back by 15° points up: 850 mm up it is 1221.0 mm high and 220.0 mm back, 150
   * mm before that 1259.9 mm high and 75.1 mm back. There the ceiling is 75.1 · tan 15° = 20.1 mm
   * higher than over the foot. Insert and ceiling near each other by 2 · sin 15° for each mm out,
   * and meet 76.9 / 0.5176 = 148.6 mm before the face.
   */
  @Test
  void findsACeilingBeforeASlab() {
    String slab =
        STEEP.replace("angle = 45", "angle = -15").replace("300]\nwhen", "850]\nwhen")
            + "[room]\nceiling-pitch = -15\nceiling = ";
    Found.by("insert-front", slab.formatted(400, "") + "1239")
        .times(1)
        .between("main 30/85", "the ceiling")
        .measured(148, 150)
        .isError(true);
    Found.by("insert-front", slab.formatted(400, "") + "1241").isNothing();
  }
}
