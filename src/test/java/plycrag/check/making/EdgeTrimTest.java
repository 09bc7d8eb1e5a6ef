package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class EdgeTrimTest {
  private static final String BAY = Found.bay("100, 300", "100, 250");

  /** A piece of 1200 by 1200 mm on a sheet of 2440 by 1220 mm leaves 10 mm at two edges. */
  @Test
  void passesWherePiecesLeaveWhatIsNotUsed() {
    Found.by("edge-trim", BAY).isNothing();
    Found.by("edge-trim", BAY + "[nesting]\nedge-trim = 10\n").isNothing();
  }

  @Test
  void tellsOfAPieceThatNeedsTheEdges() {
    Found.by("edge-trim", BAY + "[nesting]\nedge-trim = 11\n")
        .times(1)
        .isError(false)
        .says(
            "11 mm along every edge of a sheet is not to be used, and P1 on sheet S1 needs it:"
                + " nothing is left there to trim or to clamp");
  }
}
