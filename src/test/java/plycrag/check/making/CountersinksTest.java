package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/**
 * Screws of 4.5 mm with heads of 9 mm in sheets of 18 mm. A cone of 90° is half as deep as wide;
 * one of 60° 4.5 mm / tan 30° = 7.794 mm.
 */
class CountersinksTest {
  private static final String BAY = Found.bay("100, 300", "100, 250");
  private static final String HOLES = "[machine]\nscrew-holes = \"countersunk\"\n";
  private static final String DRILLS =
      "[[tool]]\ndiameter = 5\nlength = 30\n[[tool]]\ndiameter = 12\nlength = 30\n";
  private static final String SINK =
      "[[tool]]\nkind = \"countersink\"\ndiameter = 12\nlength = 10\n";

  private static Found found(String machine, String tools) {
    return Found.by("countersink", BAY + HOLES + machine + DRILLS + tools);
  }

  @Test
  void passesWithoutHeads() {
    Found.by("countersink", BAY + "[machine]\nscrew-holes = \"through\"\n").isNothing();
  }

  @Test
  void passesWithACountersinkAsWideAsTheHeads() {
    found("", SINK).isNothing();
    found("", SINK.replace("12", "9")).isNothing();
  }

  @Test
  void tellsOfHeadsWithoutATool() {
    found("", SINK.replace("12", "8"))
        .times(1)
        .isError(true)
        .says("39 heads of 9 mm are to be let in, and no countersink is told that is as wide")
        .suggests(
            "add a [[tool]] of kind countersink with diameter 9 mm or more, or let no "
                + "heads in ([machine] screw-holes = \"through\")");
    Found.by("countersink", BAY + HOLES).times(1).isError(true);
  }

  @Test
  void tellsOfACountersinkThatGoesTooDeep() {
    found("", SINK + "point-angle = 60\n")
        .times(1)
        .isError(true)
        .says(
            "countersink T3 would go 7.79 mm deep to let heads of 9 mm in; 6 mm is allowed, and half"
                + " of the sheet at most");
    found("countersink-depth = 8\n", SINK + "point-angle = 60\n").isNothing();
    found("countersink-depth = 4\n", SINK)
        .times(1)
        .suggests(
            "take a blunter countersink ([[tool]] point-angle), screws with smaller heads ([machine]"
                + " screw-head), or allow more ([machine] countersink-depth)");
  }

  /** However much is allowed, half of a sheet stays. */
  @Test
  void leavesHalfOfASheet() {
    found("countersink-depth = 12\nscrew-head = 20\n", SINK.replace("12", "25"))
        .times(1)
        .says(
            "countersink T3 would go 10 mm deep to let heads of 20 mm in; 9 mm is allowed, and half"
                + " of the sheet at most");
  }

  @Test
  void tellsOfACountersinkThatIsTooShort() {
    found("", SINK.replace("length = 10", "length = 4"))
        .times(1)
        .says("countersink T3 reaches 4 mm deep and 4.5 mm is needed");
  }

  @Test
  void tellsOfACountersinkDrivenOutsideItsSpeeds() {
    found("", SINK + "speed = 9000\ngreatest-speed = 3000\n")
        .times(1)
        .says(
            "countersink T3 would turn at 9000 rpm; it bears 100 to 3000 rpm and the spindle turns"
                + " at 100 to 60000 rpm");
  }

  @Test
  void tellsOfHeadsNoWiderThanTheirHoles() {
    found("screw-head = 5\n", SINK).times(1).says("heads of 5 mm fall through holes of 5 mm");
  }

  @Test
  void tellsThatTheClimbingSideMustLieUp() {
    found("[nesting]\nface-up = \"back\"\n", SINK)
        .times(1)
        .isError(true)
        .suggests(
            "lay the sheets the other way up ([nesting] face-up = \"front\"), or let no "
                + "heads in ([machine] screw-holes = \"through\")");
  }
}
