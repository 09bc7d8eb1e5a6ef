package plycrag.wall;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;

/**
 * Six diameters of thread in the second member (EN 1995-1-1, 8.7.2) and 5 mm before its far side
 * (common practice, no source), worked by hand.
 */
class ScrewReachTest {

  /** Sheets of 18 mm take 45 mm at least, so that the usual 50 do; of 25 mm, 52 mm. */
  @ParameterizedTest
  @CsvSource({"18, 50", "23, 50", "25, 60", "40, 70"})
  void theLengthFollowsTheSheet(double thickness, double length) {
    String toml = "[[facet]]\n[sheet]\nthickness = " + thickness;
    assertThat(Walls.parameters(toml).screws().length()).isEqualTo(length);
  }

  /** Flat timber of 32 mm behind seams: 45 mm long at most; of 4.5 mm at least that, of 4 mm 42. */
  @ParameterizedTest
  @CsvSource({"4.5, 45", "4, 45", "5, 50"})
  void flatBackingLetsNoScrewOut(double diameter, double length) {
    String toml =
        "[[facet]]\n[frame]\nsection = [32, 90]\nseams = \"flat\"\n[screws]\ndiameter = "
            + diameter;
    assertThat(Walls.parameters(toml).screws().length()).isEqualTo(length);
  }

  /** Members of 38 mm take 38 + 30 = 68 to 76 - 5 = 71 mm; of 45 mm, 75 to 85 mm. */
  @ParameterizedTest
  @CsvSource({"38, 70", "45, 80", "60, 90"})
  void theLengthFollowsTheMembers(double breadth, double length) {
    String toml = "[[facet]]\n[frame]\nsection = [" + breadth + ", 90]";
    assertThat(Walls.parameters(toml).joints().screws().length()).isEqualTo(length);
  }

  @ParameterizedTest
  @CsvSource({"20, 20", "200, 200"})
  void whatTheFileGivesStays(double given, double length) {
    String toml = "[[facet]]\n[screws]\nlength = " + given + "\n[joints]\nscrew-length = " + given;
    assertThat(Walls.parameters(toml).screws().length()).isEqualTo(length);
    assertThat(Walls.parameters(toml).joints().screws().length()).isEqualTo(length);
  }
}
