package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A piece of 1200 by 1200 mm on a sheet of 2440 by 1220 mm leaves the middle line at 1220 free. */
class PinsFitTest {
  private static final String BAY = Found.bay("100, 300", "100, 250");
  private static final String MARKS = "[machine]\nmarks = \"behind\"\n";
  private static final String TOOLS =
      """
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      """;
  private static final String PIN = "[[tool]]\ndiameter = 6\nlength = 27\n";

  private static Found found(String more) {
    return Found.by("registration-pin", BAY + MARKS + more);
  }

  @Test
  void passesWithRoomAndADrill() {
    found(TOOLS + PIN).isNothing();
  }

  @Test
  void passesWhereOneFaceIsWorked() {
    Found.by("registration-pin", BAY + MARKS.replace("behind", "engraved") + TOOLS).isNothing();
    found("[nesting]\nface-up = \"back\"\n" + TOOLS).isNothing();
  }

  /** 18 mm of sheet, 8 mm more than others, which go 0.5 mm into the board. */
  @Test
  void tellsOfPinsWithoutADrillThatReaches() {
    found(TOOLS + PIN.replace("27", "26"))
        .times(1)
        .isError(true)
        .says(
            "holes of 6 mm for pins go 26.5 mm deep, and no tool makes them at a speed that it bears")
        .suggests(
            "add a [[tool]] with diameter 6 mm and that length, or change [machine] pin-diameter or"
                + " pin-depth");
  }

  @Test
  void tellsOfASheetWithoutRoomForPins() {
    Found.by(
            "registration-pin",
            BAY.replaceFirst("width = 1200", "width = 2440") + MARKS + TOOLS + PIN)
        .isError(true)
        .says(
            "sheet S1 is worked on both faces, and its upright middle line has no room for two pins"
                + " of 6 mm beside the pieces");
  }

  /** A recess is in the back or nowhere. */
  @Test
  void asksForPinsForRecessesToo() {
    String recessed = BAY.replace("[inserts]", "[inserts]\nrecess-depth = 4");
    String mill = "[[tool]]\nkind = \"end-mill\"\ndiameter = 5\nlength = 27\n";
    Found.by("registration-pin", recessed + mill + PIN).isNothing();
    Found.by("registration-pin", recessed + mill.replace("27", "20")).times(1).isError(true);
    Found.by("registration-pin", "[nesting]\nface-up = \"back\"\n" + recessed).isNothing();
    Found.by("registration-pin", recessed.replaceFirst("width = 1200", "width = 2440") + mill)
        .isError(true)
        .suggests(
            "take sheets on which the pieces leave 17 mm at both edges ([sheet] width, "
                + "or a [[stock-sheet]]), or lay the sheets with their backs up ([nesting] "
                + "face-up = \"back\")");
  }

  /**
   * A pin of 6 mm stands 12 mm from the edge, and with 2 mm to spare 5 mm from a piece: 17 mm; a
   * mill of 6 mm that cuts the piece out takes 6 mm more.
   */
  @Test
  void standClearOfTheSheetsEdges() {
    String wide =
        Found.bay("100, 300", "100, 250")
                .replaceFirst("width = 1200", "width = 2000")
                .replaceFirst("length = 1200", "length = 1000")
            + "[nesting]\nedge-trim = %s\n[sheet]\nwidth = %s\n";
    String behind = MARKS + TOOLS + PIN;
    Found.by("registration-pin", wide.formatted("17", "1034") + behind).isNothing();
    Found.by("registration-pin", wide.formatted("16", "1032") + behind)
        .times(1)
        .suggests(
            "take sheets on which the pieces leave 17 mm at both edges ([sheet] width, "
                + "or a [[stock-sheet]]), engrave marks in the face that lies up ([machine] "
                + "marks), or lay the sheets with their backs up ([nesting] face-up = \"back\")");
    String cutOut =
        MARKS
            + "outlines = \"tabs\"\n"
            + TOOLS
            + PIN
            + "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\n";
    Found.by("registration-pin", wide.formatted("23", "1046") + cutOut).isNothing();
    Found.by("registration-pin", wide.formatted("22", "1044") + cutOut).times(1);
  }
}
