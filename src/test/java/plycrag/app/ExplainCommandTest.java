package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.TestFiles;

/** What is told of a set-out. */
class ExplainCommandTest {
  /** Common practice, no source: two studs that no pitch of 160 mm clears. */
  private static final String SHEET =
      """
      [wall]
      name = "Slipway"
      [[facet]]
      width = 1200
      length = 1200
      [frame]
      stud-spacing = 400
      [inserts]
      flange = 38
      setback = 50
      pitch-across = 160
      greatest-move = 5
      [clearance]
      insert-to-timber = 4.5
      """;

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int explain(String toml, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("slipway.toml"), toml);
    List<String> arguments = new ArrayList<>(List.of("explain", file.toString()));
    arguments.addAll(List.of(more));
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true))
        .run(arguments.toArray(String[]::new));
  }

  /** Moved by 19 mm to 69 mm, as above: 69 - 45 - 19 = 5 to the stud's face, 4.5 required. */
  @Test
  void tellsOfOneHoleWhereItWasAskedForAndWhatStandsNearest() throws IOException {
    String nudged = SHEET.replace("greatest-move = 5", "when-blocked = \"nudge\"");
    assertThat(explain(nudged, "--hole", "main 7/7")).isZero();
    assertThat(out.toString())
        .contains("main 7/7 is there, at 69 mm across and 69 mm up, column 1, row 1.")
        .contains("Column 1, asked for at 50 mm, is set at 69 mm, 19 mm to the right.")
        .contains("Nothing but other inserts could be in its way there.", "From its flange to the")
        .contains(": 5 mm.")
        .doesNotContain("Column 3");
  }

  /** 50 mm across: the flange reaches 31 mm, the stud 45 mm. */
  @Test
  void tellsOfAHoleThatIsMissingWhatWouldFreeIt() throws IOException {
    assertThat(explain(SHEET, "--hole", "MAIN 5/5")).isZero();
    assertThat(out.toString())
        .contains("main 5/5 is left out: its flange would be too near to ")
        .contains("In its way: ", "What would free it: ")
        .contains("Its flange lies over ", " by 14 mm.");
    out.getBuffer().setLength(0);
    assertThat(explain(SHEET, "--hole", "main 60/60")).isZero();
    assertThat(out.toString()).contains("No insert is asked for at main 60/60.", "The nearest is ");
  }

  @Test
  void aMarkOfNoHoleIsWrongUsage() throws IOException {
    assertThat(explain(SHEET, "--hole", "mian 5/5")).isEqualTo(2);
    assertThat(err.toString()).contains("mian 5/5 is no hole's mark; the nearest facet is main;");
    assertThat(explain(SHEET, "--hole", "five")).isEqualTo(2);
  }

  @Test
  void namesWhatStoodInTheWayAndTheNearestGridThatDoesNot() throws IOException {
    assertThat(explain(SHEET)).isZero();
    assertThat(out.toString())
        .contains(
            "Facet main: 42 inserts asked for, in 7 columns and 6 rows. Had nothing been moved, 17"
                + " inserts would have had something in the way. Left out: 12 inserts.",
            // 22.5 + 22.5 + 19 + 4.5 = 68.5, of which 50 are there
            "Column 1, asked for at 50 mm, stays there. In its way: the stud at 22.5 mm (18.5 mm"
                + " short). No place within 5 mm is clear of the stud at 22.5 mm all along.",
            "No 160 mm pitch across, from any start, clears the stud at 400 mm and the stud at 800"
                + " mm with a flange of 38 mm, 4.5 mm to timber and a setback of 50 mm. A pitch"
                + " across of 164 mm from 190 mm clears everything with the members evenly apart.");
  }

  @Test
  void tellsOfMovesInBothWays() throws IOException {
    assertThat(explain(SHEET.replace("greatest-move = 5", "when-blocked = \"nudge\""))).isZero();
    assertThat(out.toString())
        .contains(
            "None is lost.",
            // 45 + 19 + 4.5 = 68.5, on the marking grid 69
            "Column 1, asked for at 50 mm, is set at 69 mm, 19 mm to the right.",
            "Row 1, asked for at 50 mm, is set at 69 mm, 19 mm up.",
            "Column 3, asked for at 370 mm, is set at 354 mm, 16 mm to the left.");
  }

  @Test
  void saysWhenNothingIsInTheWay() throws IOException {
    assertThat(explain("[[facet]]\nwidth = 1200\nlength = 1200\n[inserts]\npitch-across = 250\n"))
        .isZero();
    assertThat(out.toString()).contains("Nothing stands in their way. None is lost.");
  }

  @Test
  void writesNothingAndKeepsTheExitCodes() throws IOException {
    assertThat(explain(TestFiles.text("must-fail/layout/top-row-in-plate.toml"))).isEqualTo(1);
    assertThat(out.toString()).contains("Nothing is moved or left out.");
    assertThat(explain("[[facet]]\nlenght = 3\n")).isEqualTo(2);
    assertThat(err.toString()).contains("slipway.toml:2:1: facet[1].lenght: ");
    assertThat(TestFiles.list(folder, "")).hasSize(1);
    assertThat(new Plycrag(new PrintWriter(out), new PrintWriter(err)).run("explain", "none.toml"))
        .isEqualTo(3);
  }
}
