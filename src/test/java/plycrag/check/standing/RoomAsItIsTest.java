package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Rooms that nobody would draw: ceilings and floors that fall, rafters over a low wall. */
class RoomAsItIsTest {
  private static final String PLUMB = "[[facet]]\nname = \"main\"\nlength = 2000\nwidth = 1200\n";
  private static final String ROOM = "[room]\n";

  /** Over 1200 mm to the right it falls by 1200 · tan 10° = 211.592 mm. */
  @Test
  void aCeilingThatFallsToTheRightIsHeldAgainstTheRightEnd() {
    String falls = PLUMB + ROOM + "ceiling-pitch-across = -10\nceiling = ";
    Found.by("room-fits", falls + "2100")
        .times(1)
        .isError(true)
        .measured(-111.59237685015796, 0)
        .says(
            "facet main is 112 mm too high for the ceiling, 1200 mm from the wall's left and 0"
                + " mm out from its foot")
        .suggests(
            "facet main fits with a length of 1888 mm up the slope ([[facet]] length = " + "1888)");
    Found.by("room-fits", falls + "2212").isNothing();
    Found.by("room-fits", falls.replace("-10", "10") + "2000").isNothing();
    Found.by("room-fits", falls.replace("-10", "10") + "1999").times(1);
  }

  /** What follows the ceiling fits where what is level does not. */
  @Test
  void aFacetMaySlantUnderIt() {
    String slanting =
        """
        [[facet]]
        name = "main"
        outline = [[0, 0], [1200, 0], [1200, 1880], [0, 2090]]
        [room]
        ceiling = 2100
        ceiling-pitch-across = -10
        """;
    Found.by("room-fits", slanting).isNothing();
    Found.by("stands-up", slanting).isNothing();
    Found.by("room-fits", slanting.replace("-10", "-11")).times(1).isError(true);
  }

  /**
   * It falls both ways by 10°. The upper edge of the frame's back, 108 mm behind the face, is 1000
   * - 108 · cos 30° = 906.469 mm out and 400 + 2000 · cos 30° + 108 · sin 30° = 2186.051 mm up; at
   * the right end the ceiling is 2500 - (1200 + 906.469) · tan 10° = 2128.573 mm high there.
   */
  @Test
  void aCeilingMayFallAslant() {
    String wall =
        "[wall]\nraise = 400\n"
            + PLUMB
            + "angle = 30\n[room]\nceiling-pitch = -10\nceiling-pitch-across = -10\nceiling = ";
    Found.by("room-fits", wall + "2500").times(1).measured(-57.478171503557405, 0);
    Found.by("room-fits", wall + "2558").isNothing();
  }

  /**
   * The diagonal is √(2000² + 90²) = 2002.02 mm; at the right end a ceiling of 2213 mm is 2001.41
   * mm high.
   */
  @Test
  void aFrameIsTiltedUpWhereTheCeilingIsLowest() {
    String falls = PLUMB + ROOM + "ceiling-pitch-across = -10\nceiling = ";
    Found.by("stands-up", falls + "2214").isNothing();
    Found.by("stands-up", falls + "2213")
        .times(1)
        .isError(false)
        .says(
            "the frame needs 2003 mm along its diagonal, and it cannot be tilted up under a ceiling"
                + " of 2001 mm");
  }

  /**
   * Rafters at 45° from a wall of 1000 mm, 500 mm behind: over the frame's back, 108 mm behind the
   * face, they are 1392 mm high.
   */
  @Test
  void raftersOverALowWallEndTheRoom() {
    String rafters = "[room]\nknee-wall-height = 1000\nknee-wall-behind = 500\nrafter-pitch = 45\n";
    String wall = "[[facet]]\nname = \"main\"\nwidth = 1200\nlength = ";
    Found.by("room-fits", wall + "1392\n" + rafters).isNothing();
    Found.by("room-fits", wall + "1600\n" + rafters)
        .times(1)
        .isError(true)
        .measured(-208, 0)
        .says(
            "facet main is 208 mm too high for the rafters, 1200 mm from the wall's left and 108"
                + " mm behind its foot")
        .suggests(
            "facet main fits with a length of 1392 mm up the slope ([[facet]] length = " + "1392)");
    Found.by("room-fits", wall + "2600\nangle = 45\n" + rafters).isNothing();
    Found.by("stands-up", wall + "2600\nangle = 45\n" + rafters).isNothing();
  }

  /** A sheet of 18 mm and a frame of 90 mm take 108 mm behind the face. */
  @Test
  void nothingStandsInTheLowWall() {
    String wall = PLUMB + "[room]\nknee-wall-height = 1000\nrafter-pitch = 80\nknee-wall-behind = ";
    Found.by("room-fits", wall.replace("= 2000", "= 900") + "108").isNothing();
    Found.by("room-fits", wall.replace("= 2000", "= 900") + "100")
        .times(1)
        .isError(true)
        .measured(-8, 0)
        .says("PL1 reaches 8 mm into the knee wall behind it");
  }

  /** Posts stand where the rafters are low. */
  @Test
  void whatHoldsTheWallKeepsClearToo() {
    String wall =
        """
        [wall]
        raise = 400
        [[facet]]
        name = "main"
        angle = 30
        length = 2000
        width = 1200
        [support]
        kind = "freestanding"
        [room]
        knee-wall-height = 1500
        knee-wall-behind = 1100
        rafter-pitch = 30
        """;
    Found low = Found.by("room-fits", wall);
    low.isError(true);
    assertThat(low.findings())
        .isNotEmpty()
        .allSatisfy(
            one ->
                assertThat(one.sentence())
                    .matches(
                        "(post|tie|brace|beam) [A-Z]+[0-9]+ is [0-9]+ mm too high for the rafters, .*"));
    Found.by("room-fits", wall.replace("knee-wall-height = 1500", "knee-wall-height = 2400"))
        .isNothing();
  }

  /**
   * A ledger under a ceiling that falls by 2° along it. It ends 60 mm beyond the joists at 0 and at
   * 1200 mm: 1320 mm long, which is 46.1 mm.
   */
  @Test
  void aLedgerLiesAgainstACeilingThatIsLevelAlongIt() {
    String hung =
        """
        [wall]
        raise = 400
        [[facet]]
        angle = 30
        length = 2000
        width = 1200
        [support]
        kind = "hung"
        [room]
        ceiling = 3000
        ceiling-members = "joists"
        joist-section = [50, 200]
        joist-span = 3000
        """;
    Found.by("support-holds", hung + "ceiling-pitch = -2\n").isNothing();
    Found.by("support-holds", hung + "ceiling-pitch-across = -2\n")
        .times(1)
        .isError(true)
        .says("what is above rises by 47 mm over the length of ledger LG1, which lies level");
  }

  /**
   * A facet at 85° whose edge, 50 mm up, ends 1992.4 mm out and 224.3 mm up, over a floor that
   * rises by 10°, and by 0.28 mm from the frame's lowest place to the foot.
   */
  @Test
  void aFloorThatRisesIsKeptClearOf() {
    String wall = "[wall]\nraise = 50\n" + PLUMB + "angle = 85\n[room]\nfloor-pitch = ";
    Found.by("room-fits", wall + "10")
        .times(1)
        .isError(true)
        .measured(-127.2771434907421, 0)
        .suggests("raise the wall ([wall] raise = 178)");
    Found.by("room-fits", wall + "5").isNothing();
  }
}
