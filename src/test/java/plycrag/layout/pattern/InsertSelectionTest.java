package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.facet.FacetLayout;

/** Two flanges of 1 in with 3/8 in between them, which no binary number of millimetres states. */
class InsertSelectionTest {
  private static String wall(String columns) {
    return """
        [wall]
        unit = "in"
        [[facet]]
        width = 96
        length = 48
        [frame]
        stud-spacing = 46
        [inserts]
        pattern = "lines"
        columns = [%s]
        rows = [12]
        when-blocked = "drop"
        """
        .formatted(columns);
  }

  /** Wherever on the marking grid the pair stands, the distance is exactly what is asked. */
  @Test
  void keepsNeighboursAtExactlyTheLeastDistance() {
    for (int sixteenth = 16 * 6; sixteenth < 16 * 20; sixteenth++) {
      double first = sixteenth / 16.0;
      FacetLayout facet = Walls.laidOut(wall(first + ", " + (first + 1.375))).facets().get(0);
      assertThat(facet.omissions()).as("at %s in", first).isEmpty();
      String reporting = wall(first + ", " + (first + 1.375)).replace("drop", "report");
      assertThat(Walls.judged(reporting).findings()).as("at %s in", first).isEmpty();
    }
  }

  @Test
  void leavesOutTheLaterOfTwoThatAreTooNear() {
    FacetLayout facet = Walls.laidOut(wall("12, 13.3125")).facets().get(0);
    assertThat(facet.inserts()).hasSize(1);
    assertThat(facet.inserts().get(0).column()).isEqualTo(1);
    assertThat(facet.omissions().get(0).reason())
        .isEqualTo("its flange would be too near to that of " + facet.inserts().get(0).mark());
  }
}
