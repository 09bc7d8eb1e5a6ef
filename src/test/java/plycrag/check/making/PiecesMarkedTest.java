package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** A piece of 1200 by 1200 mm with four holes has room for its mark. */
class PiecesMarkedTest {
  private static final String BAY = Found.bay("100, 300", "100, 250");
  private static final String MARKS = "[machine]\nmarks = \"engraved\"\n";
  private static final String TOOLS =
      """
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      point-angle = 60
      """;

  /** Flanges of 26 mm every 75 mm: 49 mm are free between two, 62 mm beside the outermost. */
  private static final String CROWDED =
      """
      [[facet]]
      width = 300
      length = 300
      [inserts]
      pattern = "lines"
      columns = [75, 150, 225]
      rows = [75, 150, 225]
      when-blocked = "report"
      """;

  private static Found found(String machine, String tools) {
    return Found.by("part-mark", BAY + MARKS + machine + tools);
  }

  @Test
  void passesUnlessAskedFor() {
    Found.by("part-mark", BAY).isNothing();
  }

  @Test
  void passesWithAnEngraverAndRoom() {
    found("", TOOLS).isNothing();
  }

  @Test
  void tellsOfMarksWithoutATool() {
    found("", "")
        .times(1)
        .isError(true)
        .says("marks are to be engraved, and no engraver is told")
        .suggests(
            "add a [[tool]] of kind engraver, or write marks by hand ([machine] marks = "
                + "\"none\")");
  }

  @Test
  void tellsOfAnEngraverDrivenOutsideItsSpeeds() {
    found("", TOOLS + "speed = 9000\ngreatest-speed = 8000\n")
        .times(1)
        .isError(true)
        .says(
            "engraver T2 would turn at 9000 rpm; it bears 100 to 8000 rpm and the spindle turns at"
                + " 100 to 60000 rpm");
  }

  @Test
  void tellsOfAPieceWithoutRoom() {
    Found.by("part-mark", CROWDED + MARKS + "mark-height = 60\n" + TOOLS)
        .times(1)
        .isError(false)
        .says("piece P1 has no room for its mark")
        .suggests("make marks smaller ([machine] mark-height), or write it by hand");
    Found.by("part-mark", CROWDED + MARKS + TOOLS).isNothing();
  }
}
