package plycrag.check.standing;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** What passes doors and stairs, and what is told not to. */
class BroughtInTest {
  @Test
  void sheetsPassTheDoor() {
    String wall = "[[facet]]\nlength = 2000\nwidth = 1200\n[room]\ndoor-width = 800\n";
    Found.by("brought-in", wall + "door-height = 2000").isNothing();
    Found.by("brought-in", wall + "door-height = 1200").times(1).isError(false);
  }

  /**
   * Plates of 3300 mm round a corner of 1000 by 1000 mm, 2000 mm high. Level, a bar of 45 mm passes
   * with 2 √2 1000 - 90 = 2738.4 mm; held steeply, with √(2648.4² + 1910²) = 3265.3 mm.
   */
  @Test
  void longSticksAreTurnedIntoTheDoor() {
    String wall =
        """
        [[facet]]
        length = 1000
        width = 3300
        [room]
        """;
    String door =
        """
        door-width = 1000
        door-height = 2000
        """;
    Found.by("brought-in", wall + door).isNothing();
    Found.by("brought-in", wall + door + "door-passage = 1000\n")
        .times(1)
        .isError(false)
        .says("PL1 is 3300 mm long and does not pass the narrowest door")
        .suggests(
            "let no stick be longer than 3265 mm ([stock] carry-length): longer members are then"
                + " spliced");
    Found.by("brought-in", wall + door + "door-passage = 1000\n[stock]\ncarry-length = 3265\n")
        .isNothing();
  }

  @Test
  void longSticksCanBeSawnBefore() {
    Found.by(
            "brought-in",
            """
            [[facet]]
            length = 1000
            width = 1200
            [room]
            stair-width = 1000
            stair-height = 2000
            stair-landing = 1000
            """)
        .times(1)
        .isError(false)
        .says("sticks of more than 3265 mm do not pass the narrowest stair");
  }

  /** A frame of 2440 by 2440 mm stands on edge in a door of 2000 mm with 2000 mm of its length. */
  @Test
  void aFrameThatIsBroughtInIsSplit() {
    String room =
        """
        [room]
        door-width = 1000
        door-height = 2000
        [handling]
        bring-in = "frames"
        """;
    Found.by("brought-in", "[[facet]]\nname = \"main\"\nlength = 2440\nwidth = 2440\n" + room)
        .times(1)
        .isError(false)
        .says(
            "the frame of facet main, 2440 mm wide and 2440 mm up the slope, does not pass the"
                + " narrowest door")
        .suggests(
            "split it: tell facets of the same angle, none longer than 2000 mm up the slope"
                + " ([[facet]] length), whose frames are bolted together");
    String half =
        """
        [[facet]]
        length = 1220
        width = 2440
        """;
    Found.by("brought-in", half + half + room).isNothing();
  }

  /**
   * Rails of 3000 mm round a corner of 1000 by 1000 mm, 2000 mm high. Held steeply, a bar of 45 by
   * 90 mm passes with √(2648.4² + 1910²) = 3265.3 mm, one of 45 by 300 with √(2438.4² + 1700²) =
   * 2972.5 mm.
   */
  @Test
  void deepRailsNeedMoreRoomThanStuds() {
    String wall =
        """
        [[facet]]
        angle = 0
        length = 1000
        width = 1200
        [room]
        door-width = 1000
        door-height = 2000
        door-passage = 1000
        [stock]
        lengths = [3200]
        [support]
        kind = "freestanding"
        behind = 2500
        front = 400
        """;
    Found.by("brought-in", wall + "rail-depth = 90\n").isNothing();
    Found.by("brought-in", wall + "rail-depth = 300\n")
        .times(1)
        .isError(false)
        .says("RA1 is 3098 mm long and does not pass the narrowest door");
  }
}
