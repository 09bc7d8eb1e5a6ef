package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.units.Tape;

/** Bits, gauges, bolts, and how much hardware a joint takes. */
class SizesSoldTest {
  private static final Tape MM = Walls.laidOut("[[facet]]\n").wall().tape();
  private static final Tape IN = Walls.laidOut("[wall]\nunit = \"in\"\n[[facet]]\n").wall().tape();

  /** Every half millimetre is sold (common practice). */
  @Test
  void clearanceTakesTheNextBitUpAndPilotsTheNextDown() {
    assertThat(DrillBit.atLeast(5, MM)).isEqualTo("5 mm");
    assertThat(DrillBit.atLeast(5.01, MM)).isEqualTo("5.5 mm");
    assertThat(DrillBit.atMost(2.5, MM)).isEqualTo("2.5 mm");
    assertThat(DrillBit.atMost(2.49, MM)).isEqualTo("2 mm");
    assertThat(DrillBit.atMost(0, MM)).isEmpty();
  }

  /** 1/64 in is 0.396875 mm: 5.326 mm are 13.42 of them, 2.3 mm are 5.795. */
  @Test
  void inInchesEverySixtyFourthIsSold() {
    assertThat(DrillBit.atLeast(5.326, IN)).isEqualTo("7/32 in");
    assertThat(DrillBit.atLeast(5.1, IN)).isEqualTo("13/64 in");
    assertThat(DrillBit.atMost(2.3, IN)).isEqualTo("5/64 in");
  }

  /** ASME B18.6.1: 0.060 in and 0.013 in for each number, up to 24. */
  @Test
  void aGaugeIsSixtyThousandthsAndThirteenForEachNumber() {
    // 0.060, 0.138, 0.372 in
    assertThat(Gauge.name(1.524)).contains("No. 0");
    assertThat(Gauge.name(3.5052)).contains("No. 6");
    assertThat(Gauge.name(9.4488)).contains("No. 24");
    // 0.385 and 0.047 in
    assertThat(Gauge.name(9.779)).isEmpty();
    assertThat(Gauge.name(1.1938)).isEmpty();
    // 0.0015 in beyond number 6 is more than a fiftieth of a number, 0.0002 in is less
    assertThat(Gauge.name(3.5433)).isEmpty();
    assertThat(Gauge.name(3.51028)).contains("No. 6");
  }

  /** Two plates of 45 mm and two diameters of 12 mm: 114, of which 120 is the next sold. */
  @Test
  void aBoltReachesTwoDiametersBeyondTheTimber() {
    Layout layout = Walls.laidOut(Found.BAY + "[joints]\nbolt-diameter = 12\n");
    BoltSize bolt = BoltSize.of(layout.wall());
    assertThat(bolt.grip()).isEqualTo(90);
    assertThat(bolt.least()).isEqualTo(114);
    assertThat(bolt.length()).contains(120.0);
  }

  /**
   * USDA Wood Handbook (FPL-GTR-190), chapter 8: 70 % of two thirds of the shank. 5 mm: 2.333, 2.3;
   * 4.5 mm: 2.1; 6 mm: 2.8; and half a millimetre of play in the sheet (common practice).
   */
  @Test
  void holesForScrewsFollowTheirDiameter() {
    assertThat(ScrewDrilling.forGusset(5)).isEqualTo(new ScrewDrilling(5.5, 2.3));
    assertThat(ScrewDrilling.of(4.5, true)).isEqualTo(new ScrewDrilling(5, 2.1));
    assertThat(ScrewDrilling.of(6, true)).isEqualTo(new ScrewDrilling(6.5, 2.8));
    assertThat(ScrewDrilling.of(6, false)).isEqualTo(new ScrewDrilling(6.5, 0));
  }

  /** Square folds are joined edge to edge: 1200 mm at a spacing, one at each end. */
  private static Map<JointHardware.Kind, Integer> counts(double spacing) {
    String wall =
        """
        [wall]
        fold-edges = "square"
        width = 1200
        [[facet]]
        angle = 20
        length = 1000
        [[facet]]
        angle = 0
        length = 1000
        [joints]
        bolt-spacing = %s
        """;
    Layout layout = Walls.laidOut(wall.formatted(spacing));
    Map<JointHardware.Kind, Integer> counts = new TreeMap<>();
    layout.joints().stream()
        .filter(joint -> joint.kind() == Joint.Kind.FOLD_EDGES)
        .map(joint -> JointHardware.of(joint, layout))
        .forEach(one -> counts.merge(one.kind(), one.count(), Integer::sum));
    return counts;
  }

  /** 600: at 0, 600 and 1200. 599: one more. 1200: one at each end, and never fewer. */
  @Test
  void aSpacingIsKeptFromEndToEnd() {
    assertThat(counts(600)).containsExactly(Map.entry(JointHardware.Kind.BRACKET, 3));
    assertThat(counts(599)).containsExactly(Map.entry(JointHardware.Kind.BRACKET, 4));
    assertThat(counts(400)).containsExactly(Map.entry(JointHardware.Kind.BRACKET, 4));
    assertThat(counts(1200)).containsExactly(Map.entry(JointHardware.Kind.BRACKET, 2));
  }
}
