package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** An L of 12 mm by 8 mm at (100, 200), 0.4 mm deep, in a box for it and a full stop or an I. */
class EngravedTest {
  private static final String PROGRAM =
      """
      (Z0 SHEET TOP)
      G21 G90 G94 G17 G54
      G0 Z20
      M3 S4000
      G4 P3
      G0 X100 Y212
      G0 Z5
      G1 Z-0.4 F600
      G1 X100 Y200 F900
      G1 X108 Y200 F900
      G0 Z20
      M5
      M2
      """;

  private static List<String> faults(String text, Cutter cutter) {
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
            new Envelope(0, 1200, 0, 2400),
            List.of(),
            3,
            "Z0 SHEET TOP");
    Expected.Mark mark =
        new Expected.Mark("the mark of piece P1", new Envelope(100, 120, 200, 212), -0.4);
    Expected expected = new Expected(List.of(), List.of(), List.of(mark), new Envelope());
    return new SelfCheck(Dialects.PLAINEST, bench)
        .faults("sheet S1", expected, List.of(new Program("p.ngc", text, List.of(cutter)))).stream()
            .map(Fault::text)
            .toList();
  }

  private static Cutter mill() {
    return new Cutter(4, 6, true, 4000, new Cutter.Feeds(600, 900));
  }

  private static List<String> faults(String text) {
    return faults(text, mill().tapering(new Cutter.Taper(0.2, 60)));
  }

  @Test
  void lettersInTheirBoxPass() {
    assertThat(faults(PROGRAM)).isEmpty();
  }

  @Test
  void anotherDepthIsTold() {
    assertThat(faults(PROGRAM.replace("Z-0.4", "Z-0.5")))
        .containsExactly("p.ngc, line 8: engraves the mark of piece P1 to another depth");
    assertThat(faults(PROGRAM.replace("Z-0.4", "Z-0.3"))).hasSize(1);
  }

  @Test
  void aLineThatLeavesTheBoxIsTold() {
    assertThat(faults(PROGRAM.replace("X108", "X120.1")))
        .containsExactly(
            "sheet S1: the mark of piece P1 is not engraved",
            "p.ngc, line 8: a cut where none is to be");
  }

  @Test
  void halfALetterIsTold() {
    assertThat(faults(PROGRAM.replace("Y212", "Y206")))
        .containsExactly("sheet S1: the mark of piece P1 is not engraved");
    assertThat(faults(PROGRAM.replace("X108", "X107")))
        .containsExactly("sheet S1: the mark of piece P1 is not engraved");
  }

  /** A cutter of 6 mm would leave a trough, not a letter. */
  @Test
  void onlyAPointedToolWrites() {
    assertThat(faults(PROGRAM, mill()))
        .containsExactly(
            "sheet S1: the mark of piece P1 is not engraved",
            "p.ngc, line 8: a cut where none is to be");
  }
}
