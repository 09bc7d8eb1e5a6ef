package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/**
 * A head of 9 mm over a hole of 5 mm; a cone of 90° is so wide 4.5 mm deep, one of 60° 7.794 mm.
 */
class SunkTest {
  private static final String PROGRAM =
      """
      (Z0 SHEET TOP)
      G21 G90 G94 G17 G54
      G0 Z20
      M3 S4000
      G4 P3
      G0 X100 Y200
      G0 Z5
      G1 Z-4.5 F600
      G0 Z20
      M5
      M2
      """;

  private static final Expected HEAD =
      new Expected(
          List.of(new Expected.Hole("head", 100, 200, 9, -4.5)),
          List.of(),
          List.of(),
          new Envelope());

  private static List<String> faults(String text, Expected expected, double tip, double angle) {
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
            new Envelope(0, 1200, 0, 2400),
            List.of(),
            3,
            "Z0 SHEET TOP");
    Cutter cone =
        new Cutter(3, 12, false, 4000, new Cutter.Feeds(600, 600))
            .tapering(new Cutter.Taper(tip, angle));
    return new SelfCheck(Dialects.PLAINEST, bench)
        .faults("sheet S1", expected, List.of(new Program("p.ngc", text, List.of(cone)))).stream()
            .map(Fault::text)
            .toList();
  }

  @Test
  void aHeadLetInFlushPasses() {
    assertThat(faults(PROGRAM, HEAD, 0, 90)).isEmpty();
    Expected sharp =
        new Expected(
            List.of(new Expected.Hole("head", 100, 200, 9, -7.794)),
            List.of(),
            List.of(),
            new Envelope());
    assertThat(faults(PROGRAM.replace("-4.5", "-7.794"), sharp, 0, 60)).isEmpty();
  }

  @Test
  void aConeTooDeepIsTooWideAsWell() {
    assertThat(faults(PROGRAM.replace("-4.5", "-4.6"), HEAD, 0, 90))
        .containsExactly(
            "p.ngc, line 8: hole head becomes 9.2 wide, not 9",
            "p.ngc, line 8: hole head goes to Z-4.6, not Z-4.5");
  }

  @Test
  void anotherPointMakesAnotherWidth() {
    assertThat(faults(PROGRAM, HEAD, 1, 90))
        .containsExactly("p.ngc, line 8: hole head becomes 10 wide, not 9");
    assertThat(faults(PROGRAM, HEAD, 0, 150))
        .singleElement()
        .asString()
        .contains("becomes 12 wide");
  }

  /** Both the hole and the head are asked for; one plunge is not both. */
  @Test
  void aHeadIsNotItsHole() {
    Expected both =
        new Expected(
            List.of(
                new Expected.Hole("hole", 100, 200, 5, -18.5),
                new Expected.Hole("head", 100, 200, 9, -4.5)),
            List.of(),
            List.of(),
            new Envelope());
    assertThat(faults(PROGRAM, both, 0, 90)).containsExactly("sheet S1: hole hole is not made");
  }
}
