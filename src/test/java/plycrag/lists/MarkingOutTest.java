package plycrag.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.document.Cell;

/** What a tape shows, worked out beside each wall. */
class MarkingOutTest {
  private static final String WALL = Found.bay("300, 800", "250, 650");

  private static List<String> rows(String toml) {
    return MarkingOut.of(Walls.judged(toml)).rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  /** Studs of 45 at 0, (1200 - 45) / 2 = 577.5 and 1200 - 45, their left sides. */
  @Test
  void platesTellTheLeftSidesOfTheirStuds() {
    assertThat(rows(WALL))
        .startsWith(
            "PL1|left side of each stud|||left end|0; 577.5; 1155|mm",
            "PL2|left side of each stud|||left end|0; 577.5; 1155|mm");
  }

  /** A line a row of holes, from the lower edge, and along it each column from the left. */
  @Test
  void holesAreReadAlongTheirRows() {
    assertThat(rows(WALL))
        .contains(
            "S1|insert holes|lower edge|250|left edge|300; 800|mm",
            "S1|insert holes|lower edge|650|left edge|300; 800|mm");
  }

  /**
   * Screws of 4.5 keep 7 d = 31.5 of the ends, rounded inward to 32: the plate's from 32 to 1168,
   * 1136 in eight steps of 142 within 150. Its middle is at 22.5, toward the nearer edge 22, the
   * other's at 1177.5, 1178.
   */
  @Test
  void screwsAreReadAlongTheirTimber() {
    assertThat(rows(WALL))
        .contains(
            "S1|screws into PL1|lower edge|22|left edge|32; 174; 316; 458; 600; 742; 884; 1026; 1168|mm",
            "S1|screws into PL2|lower edge|1178|left edge|32; 174; 316; 458; 600; 742; 884; 1026; 1168|mm");
    // the middle stud lies along a line from the left edge, in the field: within 300 of each other
    assertThat(rows(WALL))
        .contains("S1|screws into ST2|left edge|600|lower edge|77; 339; 600; 862; 1123|mm");
  }

  /** Turned over, 1200 - 300 = 900 and 1200 - 800 = 400 from the left; the plates read the same. */
  @Test
  void fromTheBackReadingsAreMirrored() {
    assertThat(rows(WALL + "[nesting]\nface-up = \"back\"\n"))
        .contains(
            "S1|insert holes|lower edge|250|left edge|400; 900|mm",
            "PL1|left side of each stud|||left end|0; 577.5; 1155|mm");
  }

  /**
   * Two sheets of 1220 as bought meet at 1220 and 1222. The first is read from the seam at its
   * right: 1220 - 200 and 1220 - 1000; the second from that at its left: 1500 - 1222.
   */
  @Test
  void sheetsAsBoughtAreReadFromTheirSeam() {
    String bought =
        """
        [[facet]]
        width = 2442
        length = 2440
        [sheet]
        length = 2440
        width = 1220
        lay = "up"
        edges = "as-bought"
        [inserts]
        pattern = "lines"
        columns = [200, 1000, 1500]
        rows = [300]
        when-blocked = "report"
        """;
    assertThat(rows(bought).stream().filter(row -> row.contains("insert holes")))
        .containsExactly(
            "S1|insert holes|lower edge|300|right edge|220; 1020|mm",
            "S2|insert holes|lower edge|300|left edge|278|mm");
  }

  /** 12 and 30 in, and 11 in up, on a sheet of 48 by 96; a unit stands by every reading. */
  @Test
  void inchesStandByTheirReadings() {
    String inches =
        """
        [wall]
        unit = "in"
        [[facet]]
        width = 48
        length = 48
        [inserts]
        pattern = "lines"
        columns = [12.5, 30]
        rows = [11.25]
        when-blocked = "report"
        """;
    assertThat(rows(inches))
        .contains("S1|insert holes|lower edge|11 1/4 in|left edge|12 1/2; 30 in|in");
  }

  /**
   * Two pieces of 600 above each other meet about 601, with a blocking of 45 below and one above:
   * their undersides at 556 and 601 are 511 and 556 above the studs' lower ends, which are on a
   * plate of 45.
   */
  @Test
  void blockingIsReadFromTheStudsLowerEnds() {
    String seamed =
        """
        [[facet]]
        width = 600
        length = 1202
        [sheet]
        length = 600
        width = 600
        [frame]
        section = [45, 90]
        stud-spacing = 700
        [inserts]
        pattern = "none"
        """;
    assertThat(rows(seamed))
        .contains("studs of main|underside of each blocking|||lower end|511; 556|mm");
  }

  /**
   * A window from 750 to 1000 and 400 to 700. Headers run from the stud's right side, 622.5, to the
   * next one's left, 1155; trimmers of 45 stand beside the window, at 705 and 1000: 82.5 and 377.5
   * along them. The trimmers begin at 400 on the lower header; the upper one's underside is 300 up.
   */
  @Test
  void timberRoundAnOpeningIsReadFromItsOwnEnds() {
    String window =
        """
        [[cutout]]
        name = "window"
        left = 750
        low = 400
        width = 250
        height = 300
        [inserts]
        pattern = "none"
        """;
    assertThat(rows(Found.BAY + window).subList(0, 6))
        .containsExactly(
            "PL1|left side of each stud|||left end|0; 577.5; 1155|mm",
            "PL2|left side of each stud|||left end|0; 577.5; 1155|mm",
            "HD1|left side of each stud|||left end|82.5; 377.5|mm",
            "HD2|left side of each stud|||left end|82.5; 377.5|mm",
            "TR1|underside of each header|||lower end|300|mm",
            "TR2|underside of each header|||lower end|300|mm");
  }
}
