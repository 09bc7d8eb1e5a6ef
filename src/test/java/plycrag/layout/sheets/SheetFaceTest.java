package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import plycrag.FaceTexts;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.skin.Seam;

/** Walls of several facets with an opening wherever their users have one. */
class SheetFaceTest {
  @Provide
  Arbitrary<String> faces() {
    return Arbitraries.oneOf(FaceTexts.any(), FaceTexts.notched());
  }

  @Property(tries = 80)
  void nothingOverlapsAndEveryEdgeIsBacked(@ForAll("faces") String toml) {
    assertThat(Inspection.of(Walls.laidOut(toml)).findings(Severity.ERROR))
        .extracting(Finding::rule)
        .doesNotContain("members-overlap", "seam-backing");
  }

  /**
   * By hand: a whole sheet's seam would run up at 2441, within the window's left trimmer, 2402 to
   * 2447. Two pieces fill 4800 with seams from 2359 to 2441; at 2402 a stud of the seam is the
   * trimmer.
   */
  @Test
  void seamsKeepOffTheTimberRoundAWindow() {
    String toml =
        """
        [wall]
        width = 4800
        [[facet]]
        length = 1220
        [[cutout]]
        left = 2447
        low = 400
        width = 500
        height = 400
        [sheet]
        lay = "across"
        start = "lower-left"
        [inserts]
        pattern = "none"
        """;
    List<Seam> seams = Walls.laidOut(toml).facets().get(0).seams();
    assertThat(seams).hasSize(1);
    assertThat(seams.get(0).middle()).isEqualTo(2402);
  }

  /** A seam through its flank would be bare for 134 mm; a third row of sheets has none there. */
  @Test
  void seamsKeepOffTheFlankOfARoundOpening() {
    String toml =
        """
        [wall]
        width = 3204
        [[facet]]
        length = 2438
        [[cutout]]
        centre = [1453, 920]
        diameter = 608
        [inserts]
        pattern = "none"
        """;
    assertThat(Inspection.of(Walls.laidOut(toml)).findings(Severity.ERROR))
        .extracting(Finding::rule)
        .doesNotContain("seam-backing");
  }
}
