package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;

/** The revision of files changes exactly when the geometry does. */
class RevisionTest {
  private static final String WALL =
      """
      [wall]
      name = "Bay"
      raise = 100
      [[facet]]
      name = "low"
      angle = 20
      width = 1200
      length = 1300
      [[cutout]]
      left = 400
      low = 500
      width = 99
      height = 60
      [sheet]
      thickness = 18
      [frame]
      stud-spacing = 400
      [inserts]
      when-blocked = "drop"
      pitch-up = 200
      hole = 12
      [screws]
      field-spacing = 300
      [machine]
      screw-holes = "through"
      screw-hole = 5
      spindle-speed = 5000
      [nesting]
      edge-trim = 0
      [output]
      """;

  private static final String REVISION = Revision.of(Walls.laidOut(WALL));

  private static String changed(String change) {
    String[] parts = change.split(" > ", -1);
    assertThat(WALL).contains(parts[0]);
    return Revision.of(Walls.laidOut(WALL.replace(parts[0], parts[1])));
  }

  @Test
  void isEightDigitsAndTheSameEveryTime() {
    assertThat(REVISION).matches("[0-9A-F]{8}");
    assertThat(Revision.of(Walls.laidOut(WALL))).isEqualTo(REVISION);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "raise = 100 > raise = 101",
        "angle = 20 > angle = 20.01",
        "width = 1200 > width = 1199",
        "left = 400 > left = 401",
        "thickness = 18 > thickness = 17.9",
        "stud-spacing = 400 > stud-spacing = 300",
        "pitch-up = 200 > pitch-up = 190",
        "hole = 12 > hole = 11",
        "field-spacing = 300 > field-spacing = 200",
        "screw-hole = 5 > screw-hole = 5.5",
        "edge-trim = 0 > edge-trim = 10",
        "[nesting] > [nesting]\nface-up = \"back\""
      })
  void changesWithWhateverHasAPlaceOrASize(String change) {
    assertThat(changed(change)).isNotEqualTo(REVISION);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"Bay\" > \"Cove\"",
        "\"low\" > \"slab\"",
        "spindle-speed = 5000 > spindle-speed = 6000",
        "[machine] > [machine]\norigin = \"upper-right\"\nprogram-unit = \"in\"",
        "[output] > [output]\ndxf = \"r12\"",
        "width = 1200 > width = \"1.2 m\""
      })
  void staysWhereNothingElseDoes(String change) {
    assertThat(changed(change)).isEqualTo(REVISION);
  }
}
