package plycrag.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;
import plycrag.finding.Finding;

/** What a mitre saw does not reach is told. */
class EndsSawnTest {
  private static String slopingTo(double right) {
    return """
        [[facet]]
        outline = [[0, 0], [2400, 0], [2400, 400], [1600, %s], [0, %s]]
        [inserts]
        pattern = "none"
        """
        .formatted(right, right);
  }

  /** Studs end on a side that rises 800 on 800 mm: 45°, which every such saw turns to. */
  @Test
  void passesWhatTheSawTurnsTo() {
    Found.by("saw-reach", slopingTo(1200)).isNothing();
  }

  /** 2000 on 800 mm: 68.2° (tan 68.199° = 2.5, from a table). */
  @Test
  void tellsOfSteeperEnds() {
    assertThat(Found.by("saw-reach", slopingTo(2400)).times(1).findings())
        .allMatch(finding -> !finding.isError())
        .extracting(Finding::sentence)
        .allMatch(
            one -> one.endsWith("68.2° from square, which is further than a mitre saw turns"));
  }
}
