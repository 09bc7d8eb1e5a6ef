package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.check.Found;

/** Every rule about how a wall stands, with a wall that passes and walls that fail. */
class StandingRulesTest {
  private static final String OVERHANG =
      """
      [wall]
      raise = 400
      [[facet]]
      name = "main"
      angle = 30
      length = 2000
      width = 1200
      """;
  private static final String KICKED =
      """
      [wall]
      width = 1200
      fold-edges = "square"
      [[facet]]
      name = "kick"
      length = 300
      [[facet]]
      name = "main"
      angle = 40
      length = 1800
      """;
  private static final String JOISTS =
      """
      ceiling-members = "joists"
      joist-section = [50, 200]
      joist-span = 3000
      """;

  private static Found holds(String wall, String support, String room) {
    return Found.by("support-holds", wall + "[support]\n" + support + "\n[room]\n" + room);
  }

  @Test
  void everyKindHoldsWhatItCan() {
    holds(OVERHANG, "kind = \"freestanding\"", "").isNothing();
    holds(OVERHANG, "kind = \"fixed\"\nfixed-to = \"concrete\"", "").isNothing();
    holds(KICKED, "kind = \"hung\"", "ceiling = 2400\n" + JOISTS).isNothing();
    holds(KICKED, "kind = \"hinged\"\nfixed-to = \"masonry\"", "").isNothing();
    Found.by("support-holds", OVERHANG).isNothing();
  }

  @Test
  void somethingKeepsItFromSwaying() {
    holds(OVERHANG, "kind = \"freestanding\"\nlateral = \"none\"", "")
        .times(1)
        .isError(true)
        .says("nothing keeps the support from swaying along the wall");
    holds(OVERHANG, "kind = \"fixed\"\nfixed-to = \"concrete\"\nlateral = \"braces\"", "")
        .times(1)
        .isError(true)
        .says("braces are asked for where there are no posts");
  }

  @Test
  void kneeBracesNeedPostsAndRoomBetweenThem() {
    String knees =
        """
        lateral = "knee-braces"
        across = "knee-braces"
        """;
    holds(OVERHANG, "kind = \"freestanding\"\n" + knees, "").isNothing();
    String narrow = OVERHANG + "[frame]\nstud-spacing = 300\n";
    holds(narrow, "kind = \"freestanding\"\nbay = 300\n" + knees, "")
        .times(1)
        .isError(true)
        .says("there is no room between the posts for what keeps them from swaying along the wall");
    holds(
            OVERHANG.replace("angle = 30", "angle = 0"),
            "kind = \"freestanding\"\nbehind = 100\n" + knees,
            "")
        .isError(true)
        .says(
            "the upper edge of facet main is held by nothing: the posts stand 100 mm behind, which"
                + " leaves a knee brace no room before them")
        .measured(100, 274.5584412271571)
        .suggests(
            "set the posts at least 275 mm behind ([support] behind = 275), or take braces from the"
                + " posts' feet ([support] across = \"braces\")");
    holds(OVERHANG, "kind = \"fixed\"\nfixed-to = \"concrete\"\nlateral = \"knee-braces\"", "")
        .times(1)
        .isError(true)
        .says("braces are asked for where there are no posts");
  }

  /** Outer studs of 45 mm in 1200 mm, and none between: 1155 mm from one to the other. */
  @Test
  void supportsFurtherApartThanAskedAreTold() {
    String apart = OVERHANG + "[frame]\nstud-spacing = 1200\n";
    holds(apart, "kind = \"freestanding\"\nbay = 1155\n", "").isNothing();
    holds(apart, "kind = \"freestanding\"\nbay = 1154\n", "")
        .times(1)
        .isError(false)
        .measured(1155, 1154);
  }

  @Test
  void onlyJoistsThatAreKnownCarryIt() {
    String hung = "kind = \"hung\"";
    holds(KICKED, hung, "ceiling = 2400\nceiling-members = \"truss\"")
        .isError(true)
        .says("the ceiling is carried by trusses, which carry nothing but what they were made for");
    holds(KICKED, hung, "ceiling = 2400")
        .isError(true)
        .says("what carries the ceiling is not known");
    holds(KICKED, hung, "ceiling = 2400\nceiling-members = \"joists\"")
        .isError(true)
        .says("section and span of the ceiling's joists have not been told");
  }

  /** Nothing else is blamed for it. */
  @Test
  void aCeilingToHangFromIsTold() {
    holds(KICKED, "kind = \"hung\"", JOISTS)
        .times(1)
        .isError(true)
        .says("the wall is to hang, and how high the ceiling is has not been told");
  }

  @Test
  void aRentedRoomTakesNothingButPosts() {
    holds(OVERHANG, "kind = \"fixed\"\nfixed-to = \"concrete\"", "no-drill = true")
        .times(1)
        .isError(true)
        .says("nothing may be fixed to the building, and this support is");
    holds(OVERHANG, "kind = \"freestanding\"", "no-drill = true").isNothing();
  }

  @Test
  void aThinWallIsNotChecked() {
    holds(OVERHANG, "kind = \"fixed\"\nfixed-to = \"single-skin\"", "").times(1).isError(false);
  }

  @Test
  void aRoofNeedsToHang() {
    String roof = OVERHANG.replace("angle = 30", "angle = 70");
    holds(roof, "kind = \"freestanding\"", "")
        .isError(true)
        .says(
            "the upper edge of facet main is held by nothing: it leans out by 70°, and "
                + "what comes level from behind ends on nothing that leans further than 60°")
        .suggests(
            "lean it out by 60° at most ([[facet]] angle = 60), or let the wall hang ([support]"
                + " kind)");
  }

  @Test
  void aLedgerMeetsTwoStuds() {
    String studs = "kind = \"fixed\"\nfixed-to = \"studs\"\nfirst-stud = 600\n";
    holds(OVERHANG, studs + "building-stud-spacing = 1200", "")
        .times(1)
        .isError(true)
        .says("ledger LG1 meets 1 place to fix it to, and two are the least");
    holds(OVERHANG, studs + "building-stud-spacing = 400", "").isNothing();
  }

  @Test
  void whatSwingsIsCutSquare() {
    holds(
            KICKED.replace("fold-edges = \"square\"", ""),
            "kind = \"hinged\"\nfixed-to = \"masonry\"",
            "")
        .times(1)
        .isError(true)
        .says("sheets and timber that are mitred to one angle bind at another");
  }

  /**
   * A face of 2000 mm plumb and its frame behind it: 2000 mm are needed, and no millimetre more.
   */
  @Test
  void aRoomTooLowIsToldByHowMuch() {
    String wall = "[[facet]]\nname = \"main\"\nlength = 2000\nwidth = 1200\n[room]\nceiling = ";
    Found.by("room-fits", wall + "1900")
        .times(1)
        .isError(true)
        .measured(-100, 0)
        .says("facet main is 100 mm too high for the ceiling")
        .suggests(
            "facet main fits with a length of 1900 mm up the slope ([[facet]] length = " + "1900)");
    Found.by("room-fits", wall + "2000").isNothing();
  }

  /** What is told to fit does fit, on a lean and under a slope. */
  @ParameterizedTest
  @CsvSource({"25, 0", "40, 10", "30, -15"})
  void whatIsToldToFitFits(double angle, double pitch) {
    String wall =
        "[wall]\nraise = 400\n[[facet]]\nname = \"main\"\nwidth = 1200\nangle = " + angle + "\n";
    String room = "\n[room]\nceiling = 2000\nceiling-pitch = " + pitch;
    Found low = Found.by("room-fits", wall + "length = 2400" + room);
    low.times(1).isError(true);
    String told = low.findings().get(0).suggestion();
    String length = told.replaceAll(".*length of ([0-9.]+) mm.*", "$1");
    Found.by("room-fits", wall + "length = " + length + room).isNothing();
    double longer = Double.parseDouble(length) + 3;
    Found.by("room-fits", wall + "length = " + longer + room).times(1);
  }

  @Test
  void aBeamInTheWallIsTold() {
    String beam = "[[obstacle]]\nname = \"beam\"\nlow = 1500\nout = -150\ndepth = 100\n";
    Found.by("room-fits", "[[facet]]\nlength = 2000\nwidth = 1200\n" + beam)
        .times(1)
        .isError(true)
        .says("ST1 overlaps beam by 45 mm");
  }

  /**
   * Plumb, 2000 mm high and 90 mm deep: the diagonal is √(2000² + 90²) = 2002.03 mm, worked by
   * hand.
   */
  @Test
  void theDiagonalDecidesWhetherItTiltsUp() {
    String wall = "[[facet]]\nlength = 2000\nwidth = 1200\n[room]\nceiling = ";
    Found.by("stands-up", wall + "2003").isNothing();
    Found.by("stands-up", wall + "2002")
        .times(1)
        .isError(false)
        .says(
            "the frame needs 2003 mm along its diagonal, and it cannot be tilted up under a ceiling"
                + " of 2002 mm");
  }

  /** The same under a ceiling that falls by 20° toward the climber: 2002.03 / cos 20° = 2130.51. */
  @Test
  void aFallingCeilingAsksForMore() {
    String wall = "[[facet]]\nlength = 2000\nwidth = 1200\n[room]\nceiling = ";
    Found.by("stands-up", wall + "2131\nceiling-pitch = -20").isNothing();
    Found.by("stands-up", wall + "2130\nceiling-pitch = -20").times(1).isError(false);
    Found.by("stands-up", wall + "2003\nceiling-pitch = 20").isNothing();
  }

  /** The second wall faces left: 1500 mm of the first and what is left beside that are clear. */
  @Test
  void theSecondWallOfACornerHasRoomToo() {
    String corner =
        """
        [[facet]]
        name = "one"
        width = 1500
        length = 1800
        [[facet]]
        name = "two"
        beside = "one"
        turn = 90
        width = 1500
        length = 1800
        [room]
        """;
    Found.by("fall-space", corner + "left = 400\n").times(1).isError(true).measured(1900, 2000);
    Found.by("fall-space", corner + "left = 500\n").isNothing();
    Found.by("room-fits", corner + "front = 1400\n")
        .times(1)
        .isError(true)
        .says("facet two reaches 100 mm through what ends the room on the front");
    Found.by("room-fits", corner + "front = 1500\n").isNothing();
  }

  /** The kick's plate of 45 mm ends at 300 mm, mitred: its middle is near 283 mm. */
  @Test
  void boltsWithinReachAreTold() {
    String mitred = KICKED.replace("fold-edges = \"square\"", "");
    String hung = mitred + "[support]\nkind = \"hung\"\n[room]\nceiling = 2400\n" + JOISTS;
    assertThat(Found.by("people-safe", hung).findings())
        .filteredOn(one -> one.first().startsWith("J"))
        .hasSize(1)
        .allMatch(one -> !one.isError() && one.sentence().contains("283 mm above the floor"))
        .allMatch(one -> one.suggestion().contains("cap it"));
    String closed = hung.replace("[wall]", "[wall]\nbehind = \"none\"");
    Found.by("people-safe", closed).isNothing();
  }

  /** 89 and 230 mm are the probes of EN 1176-1, from memory. */
  @ParameterizedTest
  @CsvSource({"88, 0", "89, 1", "230, 1", "231, 0"})
  void aGapThatHoldsAHeadIsTold(double raise, int times) {
    Found.by("people-safe", "[wall]\nraise = " + raise + "\n[[facet]]\nwidth = 1200\n")
        .times(times);
  }

  @Test
  void nobodyIsCaughtInWhatSomethingFills() {
    String post =
        """
        [[facet]]
        width = 1200
        length = 2000
        [[cutout]]
        name = "post"
        left = 500
        low = 800
        width = 120
        height = 300
        """;
    Found.by("people-safe", post)
        .times(1)
        .says("the opening post is 120 mm across and could hold a child's head");
    Found.by("people-safe", post + "filled = true\n").isNothing();
  }

  @Test
  void aHingePinches() {
    String hinged = KICKED + "[support]\nkind = \"hinged\"\nfixed-to = \"masonry\"\n";
    assertThat(Found.by("people-safe", hinged).findings())
        .anyMatch(one -> one.sentence().startsWith("fingers are caught at the hinges"));
  }

  @Test
  void aSwingingWallCutsIntoNothing() {
    String hinged =
        KICKED + "[support]\nkind = \"hinged\"\nfixed-to = \"masonry\"\nbehind = 300\nangles = ";
    Found.by("swing-clear", hinged + "[40, 55]").isNothing();
    String leaning = hinged.replace("length = 300", "angle = 15\nlength = 300");
    assertThat(Found.by("swing-clear", leaning + "[0, 40]").findings())
        .allMatch(one -> one.isError() && one.sentence().startsWith("at 0° "))
        .isNotEmpty();
  }
}
