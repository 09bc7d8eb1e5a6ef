package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;

/** A short program as it is, and with every mistake that costs a sheet, a tool or a hand. */
class SelfCheckTest {
  private static final String GOOD =
      """
      (BOATHOUSE BAY)
      (Z0 SHEET TOP)
      G21 G90 G94 G17 G54
      G0 Z20
      M3 S4000
      G4 P3
      G0 X100 Y200
      G0 Z5
      G1 Z-18.5 F600
      G0 Z5
      G0 X300 Y250.125
      G1 Z-10 F600
      G0 Z5
      G0 Z-9.5
      G1 Z-18.5
      G0 Z20
      M5
      M2
      """;

  private static final Expected TWO_HOLES =
      new Expected(
          List.of(
              new Expected.Hole("main 10/20", 100, 200, 12, -18.5),
              new Expected.Hole("main 30/25", 300, 250.125, 12, -18.5)),
          List.of(),
          List.of(),
          new Envelope());

  private static List<String> faults(String text) {
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
            new Envelope(0, 1200, 0, 2400),
            List.of(new Envelope(600, 700, 0, 400)),
            3,
            "Z0 SHEET TOP");
    Cutter drill = new Cutter(1, 12, false, 4000, new Cutter.Feeds(600, 600));
    return new SelfCheck(Dialects.PLAINEST, bench)
        .faults("sheet S1", TWO_HOLES, List.of(new Program("p.ngc", text, List.of(drill)))).stream()
            .map(Fault::text)
            .toList();
  }

  @Test
  void aGoodProgramPasses() {
    assertThat(faults(GOOD)).isEmpty();
  }

  /** The list in the issue; lines end with a slash. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G0 X100 Y200/G0 Z5/G1 Z-18.5 F600/|G0 Z5/|sheet S1: hole main 10/20 is not made",
        "F600/G0 Z5/G0 X300|F600/G0 Z5/G1 Z-18.5/G0 Z5/G0 X300|line 9: hole main 10/20 is made twice",
        "G0 X300|G0 X101 Y200/G0 X100 Y200/G1 Z-18.5 F600/G0 Z5/G0 X300|is made twice",
        "X100 Y200|X100.05 Y200|line 9: hole main 10/20 is off by 0.05",
        "Y250.125|Y250.12|line 12: hole main 30/25 is off by 0.005",
        "G0 X300|G0 X50 Y50/G1 Z-18.5 F600/G0 Z5/G0 X300|a hole at 50, 50, where none",
        "G1 Z-18.5/|G1 Z-17.5/|goes to Z-17.5, not Z-18.5",
        "G1 Z-18.5/|G1 Z-19.5/|line 15: a cut below the lowest",
        "G1 Z-18.5 F600|G0 Z-18.5|line 9: a rapid goes down into the sheet",
        "G0 Z-9.5|G0 Z-10.5|line 14: a rapid goes down into the sheet",
        "G0 Z5/G0 X300|G0 X300|line 10: a rapid across below clearance",
        "G0 Z5/G0 X300|G0 Z4/G0 X300|line 11: a rapid across below clearance",
        "G0 X300|G1 X301 Y250/G0 X300|no fault",
        "F600/G0 Z5|F600/G1 X110/G0 Z5|line 10: a tool that only drills goes across",
        "(BOATHOUSE BAY)|(BOATHOUSE) G0 Z-5)|line 1: a comment closes before its line ends",
        "(BOATHOUSE BAY)|(BOATHOUSE (BAY)|line 1: a comment opens within a comment",
        "(Z0 SHEET TOP)|(Z0 SPOILBOARD)|line 1: does not say at once: Z0 SHEET TOP",
        "M3 S4000/||line 8: a cut before the spindle is up to speed",
        "G4 P3/||a cut before the spindle is up to speed",
        "G4 P3|G4 P2|a cut before the spindle is up to speed",
        "G4 P3|G4 P3000|line 6: a wait of more than a minute",
        "S4000|S18000|line 5: not the speed of tool 1",
        " F600||a cut without a feed",
        "F600|F6000|not a feed of tool 1",
        "G21|G20|line 3: G20 is not understood",
        "G21 ||a motion before the modes are stated",
        "G0 Z20/M3|G0 Z19/M3|line 4: a tool's first motion is not Z alone",
        "G0 Z20/M3|G0 X0 Y0/G0 Z20/M3|first motion is not Z alone",
        "G0 Z20/M5|G0 Z19/M5|line 18: the tool rests below the safe height",
        "M5/||line 17: the spindle turns at the end",
        "M2/||the program does not end",
        "G0 X300|G0 X1200.1 Y0/G0 X300|the tool leaves the machine's travel",
        "G0 X300|G0 X650 Y-1/G0 X300|the tool leaves the machine's travel",
        "G0 X300|G0 X594.1 Y100/G0 X300|the tool meets what it must keep out of",
        "G0 X300|G0 X593.9 Y100/G0 X300|no fault",
        "G0 X300|G0 X800 Y100/G0 X300|the tool meets what it must keep out of",
      })
  void mistakesAreFound(String good, String bad, String fault) {
    String from = good.replace('/', '\n');
    assertThat(GOOD).contains(from);
    String to = bad == null ? "" : bad.replace('/', '\n');
    List<String> found = faults(GOOD.replaceFirst(java.util.regex.Pattern.quote(from), to));
    if (fault.equals("no fault")) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).anyMatch(one -> one.contains(fault));
    }
  }

  @Test
  void aKeepOutIsLiftedOver() {
    String over = "G0 Z20\nG0 X800 Y100\nG0 X300";
    assertThat(faults(GOOD.replace("G0 X300", over).replace("Y250.125\n", "Y250.125\nG0 Z5\n")))
        .isEmpty();
  }

  @Test
  void aToolOfAnotherDiameterIsFound() {
    assertThat(faults(GOOD)).isEmpty();
    List<Fault> found =
        new SelfCheck(
                Dialects.PLAINEST,
                new Bench(
                    new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
                    new Envelope(0, 1200, 0, 2400),
                    List.of(),
                    3,
                    "Z0 SHEET TOP"))
            .faults(
                "sheet S1",
                TWO_HOLES,
                List.of(
                    new Program(
                        "p.ngc",
                        GOOD,
                        List.of(new Cutter(1, 11, false, 4000, new Cutter.Feeds(600, 600))))));
    assertThat(found)
        .extracting(Fault::sentence)
        .contains("hole main 10/20 becomes 11 wide, not 12");
  }

  /** Two drills, changed by a pause or by word, the first too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0|M0|",
        "T1 M6|T2 M6|",
        "G4 P0|M0|",
        "M0/M0|M0|line 14: a pause for no other tool",
        "T2 M6|T1 M6|not the speed of tool 2",
        "T1 M6|T3 M6|no tool 3 is foreseen",
        "M0|G4 P0|not the speed of tool 1",
        "M0|M3 S4000/M0|changed while the spindle turns",
        "M0|M0/G0 X1 Y1|first motion is not Z alone",
        "M0|G0 Z6/M0|rests below the safe height",
      })
  void toolsAreChanged(String first, String second, String fault) {
    String head = "(Z0 SHEET TOP)\nG21 G90 G94 G17 G54\nG0 Z20\n";
    String one = "G0 Z20\nM3 S4000\nG4 P3\nG0 X100 Y200\nG0 Z5\nG1 Z-18.5 F600\nG0 Z20\nM5\n";
    String other = one.replace("4000", "6000").replace("100 Y200", "200 Y200");
    String text = head + first + "\n" + one + second + "\n" + other + "M2\n";
    Expected expected =
        new Expected(
            List.of(
                new Expected.Hole("a", 100, 200, 12, -18.5),
                new Expected.Hole("b", 200, 200, 8, -18.5)),
            List.of(),
            List.of(),
            new Envelope());
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
            new Envelope(0, 1200, 0, 2400),
            List.of(),
            3,
            "Z0 SHEET TOP");
    List<Cutter> drills =
        List.of(
            new Cutter(1, 12, false, 4000, new Cutter.Feeds(600, 600)),
            new Cutter(2, 8, false, 6000, new Cutter.Feeds(600, 600)));
    List<Fault> found =
        new SelfCheck(Dialects.RICHEST, bench)
            .faults(
                "sheet S1", expected, List.of(new Program("p", text.replace('/', '\n'), drills)));
    if (fault == null) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).anyMatch(it -> it.text().contains(fault));
    }
  }
}
