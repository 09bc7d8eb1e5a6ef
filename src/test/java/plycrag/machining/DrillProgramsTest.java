package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.ApprovedLayout;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.files.Specimens;
import plycrag.files.ngc.NgcReader;
import plycrag.files.ngc.NgcWriter;

class DrillProgramsTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [sheet]
      thickness = 17.5
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 300]
      """;

  private static List<DrillProgram> programs(String toml) {
    return DrillPrograms.of((ApprovedLayout) Walls.judged(toml));
  }

  @Test
  void drillsFromTheSpoilboardUp() {
    DrillProgram program = programs(WALL).get(0);
    assertThat(program.remarks()).contains("Z0 spoilboard");
    assertThat(program.moves().get(0)).isEqualTo(new Move.RapidZ(42.5));
    assertThat(program.moves().get(1)).isEqualTo(new Move.SpindleOn(4000));
    assertThat(program.moves().get(2)).isEqualTo(new Move.Dwell(3));
    assertThat(Steps.of(program))
        .filteredOn(Move.Plunge.class::isInstance)
        .hasSize(4)
        .containsOnly(new Move.Plunge(-0.5, 600));
    assertThat(program.moves().get(program.moves().size() - 1)).isEqualTo(new Move.SpindleOff());
  }

  @Test
  void drillsFromTheSheetsTopDown() {
    DrillProgram program =
        programs(WALL + "[machine]\nz-zero = \"sheet-top\"\nbreakthrough = 1\n").get(0);
    assertThat(program.remarks()).contains("Z0 sheet top");
    NgcReader text = NgcReader.read(NgcWriter.write(program, Specimens.PLAIN));
    assertThat(text.comments()).contains("Z0 SHEET TOP");
    assertThat(text.holes())
        .containsExactlyInAnyOrder(
            new NgcReader.Hole(100, 100, -18.5),
            new NgcReader.Hole(300, 100, -18.5),
            new NgcReader.Hole(100, 300, -18.5),
            new NgcReader.Hole(300, 300, -18.5));
  }

  @Test
  void aSheetWithoutHolesGetsNoProgram() {
    String wall =
        "[[facet]]\nwidth = 1200\nlength = 2450\n[sheet]\nlay = \"across\"\nleast-width = 50\n";
    String low = "[inserts]\npattern = \"lines\"\ncolumns = [100]\nrows = [100]\n";
    assertThat(programs(wall.replace("2450", "2440") + low))
        .extracting(DrillProgram::sheet)
        .containsExactly("S1");
  }

  /** The sheet is 2440 by 1220 mm: its upper right corner lies there from the lower left one. */
  @Test
  void countsFromAnyCorner() {
    String upperRight = WALL + "[machine]\norigin = \"upper-right\"\n";
    DrillProgram program = programs(upperRight).get(0);
    assertThat(program.remarks()).contains("X0 Y0 upper right corner of the sheet");
    assertThat(NgcReader.read(NgcWriter.write(program, Specimens.PLAIN)).holes())
        .containsExactlyInAnyOrder(
            new NgcReader.Hole(100 - 2440.0, 100 - 1220.0, -0.5),
            new NgcReader.Hole(300 - 2440.0, 100 - 1220.0, -0.5),
            new NgcReader.Hole(100 - 2440.0, 300 - 1220.0, -0.5),
            new NgcReader.Hole(300 - 2440.0, 300 - 1220.0, -0.5));
  }

  @Test
  void aControllerThatChangesToolsIsToldTheTool() {
    DrillProgram program = programs(WALL + "[machine]\ntool-change = \"word\"\n").get(0);
    assertThat(program.moves())
        .startsWith(
            new Move.RapidZ(117.5),
            new Move.ToolChange(1, "Tool T1, drill, diameter 12"),
            new Move.RapidZ(42.5),
            new Move.SpindleOn(4000));
  }

  /** 17.5 mm of sheet and 150 mm above it, beside the sheet. */
  @Test
  void aPersonGetsAtTheSpindleToChangeTools() {
    String machine = "[machine]\ntool-change = \"pause\"\nchange-height = 150\nchange-x = -200\n";
    DrillProgram program = programs(WALL + machine).get(0);
    assertThat(program.moves())
        .startsWith(
            new Move.RapidZ(167.5),
            new Move.RapidXy(-200, 0),
            new Move.ToolChange(1, "Tool T1, drill, diameter 12. Set Z zero again with it"),
            new Move.RapidZ(42.5));
    assertThat(programs(WALL + machine + "length-offsets = true\n").get(0).moves())
        .contains(new Move.ToolChange(1, "Tool T1, drill, diameter 12"));
  }

  @Test
  void aToolThatPecksComesOutForItsChips() {
    String tool = "[[tool]]\nnumber = 7\ndiameter = 12\nlength = 30\npeck = 8\nspeed = 3000\n";
    DrillProgram program = programs(WALL + tool).get(0);
    assertThat(program.tool()).isEqualTo(7);
    assertThat(program.moves()).contains(new Move.SpindleOn(3000));
    assertThat(program.moves())
        .filteredOn(Move.DrillCycle.class::isInstance)
        .hasSize(4)
        .allMatch(move -> ((Move.DrillCycle) move).peck() == 8);
  }

  /** Round the four holes a cutter of 6 mm keeps 3 mm from their centres; Z is that of a hole. */
  @Test
  void holesWithoutADrillAreBored() {
    String tool = "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 20\n";
    DrillProgram program = programs(WALL + tool + "[machine]\narcs = true\n").get(0);
    assertThat(program.remarks()).contains("Tool T1, end mill, diameter 6");
    assertThat(program.moves())
        .filteredOn(move -> move instanceof Move.Arc arc && arc.to().z() == -0.5)
        .extracting(move -> ((Move.Arc) move).centre())
        .containsOnly(new Xy(100, 100), new Xy(300, 100), new Xy(100, 300), new Xy(300, 300));
    assertThat(NgcWriter.write(program, Specimens.PLAIN)).contains("G3 X97. Y100. ", "I-3. J0.");
  }

  /**
   * Feed = speed × flutes × chip load. For a cutter of 1/4 in, 0.006 to 0.009 in a tooth in plywood
   * (chart of asttooling.com), an upper bound for a hobby machine: the default of 1500 mm/min at 18
   * 000 rpm and two flutes must stay below it.
   */
  @Test
  void theDefaultFeedIsNoFasterThanTheChart() {
    String tool = "[[tool]]\nkind = \"end-mill\"\ndiameter = 6.35\nlength = 20\n";
    double feed =
        Walls.parameters(WALL + tool).machine().equipment().tools().get(0).drive().feeds().cut();
    assertThat(feed / 18_000 / 2).isLessThan(0.006 * 25.4).isGreaterThan(0.02);
  }

  /** A name from a parameter file stays a remark. */
  @Test
  void aNameCannotBecomeAMotion() {
    String wall = "[wall]\nname = \"Bay) G0 Z-99 (x\"\n" + WALL;
    NgcReader text = NgcReader.read(NgcWriter.write(programs(wall).get(0), Specimens.PLAIN));
    assertThat(text.holes()).hasSize(4).allMatch(hole -> hole.bottom() == -0.5);
    assertThat(text.comments().get(0)).doesNotContain("(", ")");
  }
}
