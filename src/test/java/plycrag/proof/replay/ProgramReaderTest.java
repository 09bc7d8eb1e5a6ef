package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgramReaderTest {
  private static final String MODES = "G17 G21 G54 G90 G94 F600\n";

  private static ReadProgram read(String text) {
    return ProgramReader.read("p.ngc", text, Dialects.RICHEST);
  }

  /** The motions after a start at a place, in words. */
  private static List<String> motions(String start, String lines) {
    ReadProgram reading = read(MODES + start + "\nG4 P0\n" + lines + "\nM2\n");
    assertThat(reading.faults()).isEmpty();
    List<String> motions = new ArrayList<>();
    for (Step step : reading.steps()) {
      if (step instanceof Step.Rapid rapid) {
        motions.add("rapid " + text(rapid.to()));
      } else if (step instanceof Step.Feed feed) {
        motions.add("feed " + text(feed.way().get(feed.way().size() - 1)));
      } else if (step instanceof Step.Wait wait) {
        motions.add("wait " + wait.seconds());
      }
    }
    return motions.subList(motions.indexOf("wait 0.0") + 1, motions.size());
  }

  private static String text(TipPlace spot) {
    return round(spot.x()) + " " + round(spot.y()) + " " + round(spot.z());
  }

  private static double round(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  /** NISTIR 6556, section 3.5.16.3 (G81), first example. */
  @Test
  void drillsTheReportsFirstExample() {
    assertThat(motions("G0 X1 Y2 Z3", "G90 G81 G98 X4 Y5 Z1.5 R2.8"))
        .containsExactly(
            "rapid 4.0 5.0 3.0", "rapid 4.0 5.0 2.8", "feed 4.0 5.0 1.5", "rapid 4.0 5.0 3.0");
  }

  /** NISTIR 6556, section 3.5.16.3 (G81), second example: steps, three times. */
  @Test
  void drillsTheReportsExampleInSteps() {
    assertThat(motions("G0 X1 Y2 Z3", "G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3"))
        .containsExactly(
            "rapid 1.0 2.0 4.8",
            "rapid 5.0 7.0 4.8",
            "feed 5.0 7.0 4.2",
            "rapid 5.0 7.0 4.8",
            "rapid 9.0 12.0 4.8",
            "feed 9.0 12.0 4.2",
            "rapid 9.0 12.0 4.8",
            "rapid 13.0 17.0 4.8",
            "feed 13.0 17.0 4.2",
            "rapid 13.0 17.0 4.8");
  }

  /**
   * Heights of a peck as LinuxCNC 2.9's interpreter printed them, whose G83 goes back to R and
   * begins 0.254 mm above the last depth.
   */
  @Test
  void pecksAsAnInterpreterDid() {
    assertThat(motions("G0 X20 Y20 Z10", "G99 G83 X20 Y20 Z-20 R2 Q8"))
        .containsExactly(
            "rapid 20.0 20.0 2.0",
            "feed 20.0 20.0 -6.0",
            "rapid 20.0 20.0 2.0",
            "rapid 20.0 20.0 -5.746",
            "feed 20.0 20.0 -14.0",
            "rapid 20.0 20.0 2.0",
            "rapid 20.0 20.0 -13.746",
            "feed 20.0 20.0 -20.0",
            "rapid 20.0 20.0 2.0");
  }

  /** Only the height is needed before: the line tells the place. */
  @Test
  void aCycleMayBeTheFirstWayAcross() {
    assertThat(read(MODES + "G0 Z9\nG99 G81 X1 Y1 Z-1 R2\nM2\n").faults()).isEmpty();
    assertThat(read(MODES + "G0 Z9\nG99 G81 X1 Z-1 R2\nM2\n").faults())
        .extracting(Fault::sentence)
        .containsExactly("a cycle before the tool's place is known");
    assertThat(read(MODES + "G99 G81 X1 Y1 Z-1 R2\nM2\n").faults())
        .extracting(Fault::sentence)
        .containsExactly("a cycle before the tool's height is known");
  }

  /** From memory of LinuxCNC's G73: chips are broken by the same step back. */
  @Test
  void breaksChips() {
    assertThat(motions("G0 X0 Y0 Z10", "G99 G73 X0 Y0 Z-10 R2 Q8"))
        .containsExactly(
            "rapid 0.0 0.0 2.0",
            "feed 0.0 0.0 -6.0",
            "rapid 0.0 0.0 -5.746",
            "feed 0.0 0.0 -10.0",
            "rapid 0.0 0.0 2.0");
  }

  /** NISTIR 6556: G82 waits at the bottom; R and Z hold on; the first height is the series'. */
  @Test
  void waitsAndHoldsOn() {
    assertThat(motions("G0 X0 Y0 Z10", "G98 G82 X1 Y0 Z-1 R2 P0.5\nX2\nG80\nG0 Z20"))
        .containsExactly(
            "rapid 1.0 0.0 10.0",
            "rapid 1.0 0.0 2.0",
            "feed 1.0 0.0 -1.0",
            "wait 0.5",
            "rapid 1.0 0.0 10.0",
            "rapid 2.0 0.0 10.0",
            "rapid 2.0 0.0 2.0",
            "feed 2.0 0.0 -1.0",
            "wait 0.5",
            "rapid 2.0 0.0 10.0",
            "rapid 2.0 0.0 20.0");
  }

  @Test
  void countsInchesByTheInternationalInch() {
    assertThat(motions("G0 X0 Y0 Z10", "G20\nG0 X1 Y-0.5 Z2"))
        .containsExactly("rapid 25.4 -12.7 50.8");
  }

  /** A quarter, a half, three quarters, a whole turn; each by its centre or its radius. */
  @ParameterizedTest
  @CsvSource({
    "G3 X0 Y10 I-10 J0, 15.708",
    "G3 X0 Y10 R10, 15.708",
    "G2 X0 Y10 I-10 J0, 47.124",
    "G2 X0 Y10 R-10, 47.124",
    "G3 X-10 Y0 I-10 J0, 31.416",
    "G2 X-10 Y0 R10, 31.416",
    "G3 I-10 J0, 62.832",
    "G2 X10 Y0 I-10, 62.832",
  })
  void turnsArcs(String arc, double length) {
    ReadProgram reading = read(MODES + "G0 Z5\nG0 X10 Y0\n" + arc + " Z-2\nM2\n");
    assertThat(reading.faults()).isEmpty();
    Step.Feed feed = (Step.Feed) reading.steps().get(2);
    double sum = 0;
    for (int at = 1; at < feed.way().size(); at++) {
      sum += feed.way().get(at).beside(feed.way().get(at - 1));
    }
    assertThat(sum).isCloseTo(length, within(0.01));
    assertThat(feed.way().get(feed.way().size() - 1).z()).isEqualTo(-2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G28|is not understood",
        "G53 G0 Z0|is not understood",
        "G92 X0|is not understood",
        "G0 A1|is not understood",
        "G0 X1 X2|two words",
        "G0 G1 X1|exclude each other",
        "G0 X1 Q2|no meaning",
        "G0 X1e1|no word",
        "G0 X1,5|no word",
        "G0 X#1|no word",
        "G0 X[1]|no word",
        "g0 x1|no word",
        "/G0 X1|no word",
        "G0 X--1|no word",
        "G0 X+1|no word",
        "G-0 X1|not understood",
        "G0|without a place",
        "G80 X5|without a motion",
        "G1 X5 F0|a feed of nothing",
        "G4|the word P is missing",
        "G4 P-1|less than nothing",
        "M3|without a speed",
        "M6|before a tool is named",
        "T1.5|no number of a tool",
        "M4 S100|is not understood",
        "G99 G81 X1 Y1 Z-1 R-2|R lies below",
        "G99 G81 X1 Y1 R2|Z is missing",
        "G81 X1 Y1 Z-1 R2|before G98 or G99",
        "G99 G83 X1 Y1 Z-1 R2|needs Q",
        "G99 G82 X1 Y1 Z-1 R2|needs P",
        "G99 G81 X1 Y1 Z-1 R2 L0|a bad L",
        "G2 X5 Y5|without centre",
        "G2 X5 Y5 I1 J1|ends differ",
        "G2 X50 Y0 R1|too small",
        "G2 R5|ends where it began",
        "(one (two) three)|opens within",
        "(one|does not close",
        "(one) G0 X1|closes before",
        "one)|no word",
        "(MSG, one)|obey",
        "(probeopen one)|obey",
        "G0 X1\tY1|not ASCII",
        "(é)|not ASCII",
        "%|percent",
      })
  void refuses(String line, String sentence) {
    ReadProgram reading = read(MODES + "G0 X0 Y0 Z9\n" + line + "\nM2\n");
    assertThat(reading.faults()).hasSize(1);
    assertThat(reading.faults().get(0).line()).isEqualTo(3);
    assertThat(reading.faults().get(0).sentence()).contains(sentence);
  }

  @Test
  void refusesMotionsBeforeTheModes() {
    for (String mode : List.of("G17", "G54", "G90", "G94")) {
      String text = MODES.replace(mode + " ", "") + "G0 Z1\nM2\n";
      assertThat(read(text).faults()).as(mode).hasSize(1);
    }
    assertThat(read("G17 G54 G90 G94\nG0 Z1\nM2\n").faults().get(0).text())
        .isEqualTo("p.ngc, line 2: a motion before the modes are stated");
    assertThat(read("G17 G21 G54 G90 G94\nG0 Z1\nG1 Z0\nM2\n").faults().get(0).sentence())
        .isEqualTo("a cut without a feed");
  }

  @Test
  void refusesATextWithoutEndOrMoreThanOne() {
    assertThat(read(MODES).faults())
        .extracting(Fault::sentence)
        .containsOnly("the program does not end");
    assertThat(read("M2\nG0 X1\n").faults()).extracting(Fault::line).containsExactly(2);
    assertThat(read("M2").faults()).isNotEmpty();
    assertThat(read("%\nM2\n%\n").faults()).isEmpty();
    assertThat(read("G4 P" + "0".repeat(80) + "\nM2\n").faults().get(0).sentence())
        .isEqualTo("longer than 72");
  }

  /** Grbl 1.1 lists neither cycles nor M6 (its README); the plainest understand still less. */
  @ParameterizedTest
  @CsvSource({
    "G81 G98 X1 Y1 Z1 R2",
    "G2 I5",
    "G20",
    "G91",
    "M6 T1",
    "M0",
    "N10 G0 X1",
    "G0 X1 ; a",
    "%",
    "G98"
  })
  void thePlainestUnderstandsLess(String line) {
    String text = MODES + "G0 X0 Y0 Z9\n" + line + "\nM2\n";
    assertThat(ProgramReader.read("p", text, Dialects.PLAINEST).faults()).hasSize(1);
  }

  @Test
  void readsRemarksNumbersAndWaitsOfADialect() {
    Abilities dialect = new Abilities(Dialects.RICHEST.abilities(), true, 72);
    ReadProgram reading =
        ProgramReader.read("p", "(Z0 spoilboard)\nN10G4P2500;wait\nM2\n", dialect);
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.remarks()).containsExactly("Z0 SPOILBOARD", "WAIT");
    assertThat(reading.steps().get(0)).isEqualTo(new Step.Wait(2, 2.5));
  }
}
