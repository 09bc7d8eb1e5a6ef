package plycrag.proof.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;

/** Holes bored and contours cut with a 6 mm cutter; ways worked out by hand. */
class RoutedTest {
  private static final String HEAD =
      "(Z0 SHEET TOP)\nG21 G90 G94 G17 G54\nG0 Z20\nM3 S18000\nG4 P3\n";
  private static final String TAIL = "G0 Z20\nM5\nM2\n";
  private static final Expected HOLE =
      new Expected(
          List.of(new Expected.Hole("h", 100, 200, 12, -18.5)),
          List.of(),
          List.of(),
          new Envelope());

  /** From 3 mm right of the centre down in a helix, once round at the bottom, to the middle. */
  private static final String HELIX =
      """
      G0 X103 Y200
      G0 Z5
      G1 Z0 F600
      G3 X103 Y200 Z-6 I-3 J0
      G3 X103 Y200 Z-12 I-3 J0
      G3 X103 Y200 Z-18.5 I-3 J0
      G3 X103 Y200 I-3 J0
      G1 X100 Y200
      """;

  /** Counter-clockwise round 100 by 50 with its lower left corner at 500, 500: 3 mm outside. */
  private static final String ROUND =
      """
      G1 X600 Y497
      G3 X603 Y500 R3
      G1 Y550
      G3 X600 Y553 R3
      G1 X500
      G3 X497 Y550 R3
      G1 Y500
      G3 X500 Y497 R3
      G1 X550
      """;

  private static final String PASSES =
      "G0 X550 Y497\nG0 Z5\nG1 Z-9 F600\n" + ROUND + "G1 Z-18.5\n" + ROUND;

  private static List<String> faults(Expected expected, String cuts) {
    Bench bench =
        new Bench(
            new Heights(new Heights.Faces(0, -18), new Heights.Travel(-18.5, 5, 20)),
            new Envelope(-10, 1210, -10, 2410),
            List.of(),
            3,
            "Z0 SHEET TOP");
    Cutter cutter = new Cutter(2, 6, true, 18_000, new Cutter.Feeds(600, 600));
    Abilities dialect = new Abilities(EnumSet.of(Ability.PARENTHESES, Ability.ARCS), false, 72);
    Program program = new Program("p.ngc", HEAD + cuts + TAIL, List.of(cutter));
    return new SelfCheck(dialect, bench)
        .faults("sheet S1", expected, List.of(program)).stream().map(Fault::text).toList();
  }

  private static Expected piece(boolean keeps, Optional<Expected.Bridges> bridges) {
    return new Expected(
        List.of(),
        List.of(
            new Expected.Contour(
                "piece P1", Shapes.rectangle(500, 500, 600, 550), keeps, -18.5, bridges)),
        List.of(),
        new Envelope(0, 1200, 0, 2400));
  }

  @Test
  void aHelixBoresAHole() {
    assertThat(faults(HOLE, HELIX)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "103|103.1|off by 0.1",
        "I-3 J0|I-2.9 J0|off by 0.1",
        "Z-18.5|Z-18|goes to Z-18, not Z-18.5",
        "G3 X103 Y200 I-3 J0|G3 X97 Y200 I-3 J0|a cut where none is to be",
        "G3 X103 Y200 I-3 J0|G1 X103.2 Y200|a cut where none is to be",
        "X100 Y200|X90 Y200|a cut where none is to be",
        "Z-12 I-3 J0|Z-12 I-3.1 J0|a cut where none is to be",
      })
  void badlyBoredHolesAreFound(String good, String bad, String fault) {
    assertThat(faults(HOLE, HELIX.replace(good, bad))).anyMatch(one -> one.contains(fault));
  }

  @Test
  void aHelixTooWideIsMeasured() {
    String wide = HELIX.replace("103", "103.02").replace("I-3", "I-3.02");
    assertThat(faults(HOLE, wide))
        .containsExactly("p.ngc, line 9: hole h becomes 12.04 wide, not 12");
  }

  /** Moves as short as 10° stand off a circle of 3 mm by 3 (1 - cos 5°) = 0.011 mm. */
  @Test
  void shortMovesBoreAHole() {
    assertThat(faults(HOLE, polygon(36))).isEmpty();
  }

  /** Six moves stand off by 0.4 mm. */
  @Test
  void longMovesBoreNone() {
    assertThat(faults(HOLE, polygon(6)))
        .contains("p.ngc, line 8: a cut where none is to be", "sheet S1: hole h is not made");
  }

  private static String polygon(int sides) {
    String round =
        IntStream.rangeClosed(1, sides)
            .mapToObj(
                at ->
                    "G1 X%.3f Y%.3f\n"
                        .formatted(
                            100 + 3 * Math.cos(2 * Math.PI * at / sides),
                            200 + 3 * Math.sin(2 * Math.PI * at / sides)))
            .collect(Collectors.joining());
    return "G0 X103 Y200\nG0 Z5\nG1 Z-18.5 F600\n" + round;
  }

  /** A recess 24 wide needs rounds at 3 and 9 mm; with the outer alone a core stands. */
  @Test
  void aBlindHoleMustLeaveNoCore() {
    Expected recess =
        new Expected(
            List.of(new Expected.Hole("r", 100, 200, 24, -4)),
            List.of(),
            List.of(),
            new Envelope());
    String inner = "G1 X103 Y200\nG3 X103 Y200 I-3 J0\n";
    String outer = "G1 X109 Y200\nG3 X109 Y200 I-9 J0\n";
    String down = "G0 X103 Y200\nG0 Z5\nG1 Z-4 F600\n";
    assertThat(faults(recess, down + inner + outer)).isEmpty();
    String wider = down.replace("103", "109") + outer + "G0 Z5\n";
    assertThat(faults(recess, down + inner + "G0 Z5\n" + wider)).isEmpty();
    assertThat(faults(recess, wider + wider)).contains("sheet S1: hole r is not made");
    assertThat(faults(recess, down.replace("103", "109") + outer))
        .contains("sheet S1: hole r is not made");
  }

  /** A recess and the hole in its floor, by one cutter in one program, whichever is made first. */
  @Test
  void aRecessAboutAHoleIsNoWiderHole() {
    Expected both =
        new Expected(
            List.of(
                new Expected.Hole("h", 100, 200, 12, -18.5),
                new Expected.Hole("r", 100, 200, 24, -4)),
            List.of(),
            List.of(),
            new Envelope());
    String recess =
        """
        G0 X103 Y200
        G0 Z5
        G1 Z-4 F600
        G3 X103 Y200 I-3 J0
        G1 X109 Y200
        G3 X109 Y200 I-9 J0
        G1 X100 Y200
        G0 Z5
        """;
    assertThat(faults(both, recess + HELIX)).isEmpty();
    assertThat(faults(both, HELIX + "G0 Z5\n" + recess)).isEmpty();
    assertThat(faults(both, HELIX)).containsExactly("sheet S1: hole r is not made");
    assertThat(faults(both, recess)).containsExactly("sheet S1: hole h is not made");
    assertThat(faults(both, HELIX + recess.replace("Z-4", "Z-4.5")))
        .contains("p.ngc, line 16: hole r goes to Z-4.5, not Z-4");
  }

  @Test
  void anOutlineIsCutInPasses() {
    assertThat(faults(piece(true, Optional.empty()), PASSES)).isEmpty();
  }

  /** The piece fills the sheet's left end: one cut across frees it. */
  @Test
  void theSheetsEdgesNeedNoCut() {
    Expected.Contour end =
        new Expected.Contour(
            "piece P1", Shapes.rectangle(0, 0, 400, 1220), true, -18.5, Optional.empty());
    Expected expected =
        new Expected(List.of(), List.of(end), List.of(), new Envelope(0, 1200, 0, 1220));
    String across = "G0 X403 Y-5\nG0 Z5\nG1 Z-18.5 F600\nG1 Y1225\n";
    assertThat(faults(expected, across)).isEmpty();
    assertThat(faults(expected, across.replace("1225", "1000")))
        .containsExactly("sheet S1: piece P1 is not cut at 400, 1000.5");
    assertThat(faults(new Expected(List.of(), List.of(end), List.of(), new Envelope()), across))
        .isNotEmpty();
  }

  @Test
  void sharpCornersOutsideDoNoHarm() {
    String sharp =
        "G0 X550 Y497\nG0 Z5\nG1 Z-18.5 F600\nG1 X603\nG1 Y553\nG1 X497\nG1 Y497\nG1 X550\n";
    assertThat(faults(piece(true, Optional.empty()), sharp)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G1 Y550|G1 X602.98 Y550|cuts into piece P1 by 0.02",
        "Y553|Y553.02|is not cut at",
        "Z-18.5|Z-18.45|is not cut at",
        "Z-18.5|Z-18.6|below the lowest",
        "G1 X500/|G1 X501/G1 X520 Y520/G1 X500 Y553/|cuts into piece P1",
        "G1 Y550|G1 Y520/G1 Z5/G1 Y530/G1 Z-18.5/G1 Y550|is not cut at 600, 520",
        "Y497 R3/|Y497 R3/G1 X500 Y400/G1 X500 Y497/|leaves the way beside an outline",
        "G1 Y500/|G1 X496.98 Y520/G1 X497 Y500/|leaves the way beside an outline",
        "G1 Y500/|G1 Y520/G1 X497/G1 Y500/|no fault",
      })
  void badOutlinesAreFound(String good, String bad, String fault) {
    String cuts = PASSES.replace(good.replace('/', '\n'), bad.replace('/', '\n'));
    assertThat(cuts).isNotEqualTo(PASSES);
    List<String> found = faults(piece(true, Optional.empty()), cuts);
    if (fault.equals("no fault")) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).anyMatch(one -> one.contains(fault));
    }
  }

  @Test
  void whatStraysIsFoundAndWhatIsMissing() {
    String stray = "G0 X50 Y50\nG0 Z5\nG1 Z-5 F600\nG1 X60\nG0 Z5\n";
    assertThat(faults(piece(true, Optional.empty()), stray + PASSES))
        .containsExactly("p.ngc, line 8: a cut where none is to be");
    assertThat(faults(piece(true, Optional.empty()), ""))
        .containsExactly("sheet S1: piece P1 is not cut");
  }

  /** The cutter's way lies 3 mm inside; it cannot reach into the corners. */
  @Test
  void anOpeningIsCutFromInside() {
    String inside =
        "G0 X550 Y503\nG0 Z5\nG1 Z-18.5 F600\nG1 X597\nG1 Y547\nG1 X503\nG1 Y503\nG1 X550\n";
    assertThat(faults(piece(false, Optional.empty()), inside)).isEmpty();
    assertThat(faults(piece(true, Optional.empty()), inside))
        .contains("p.ngc, line 8: cuts into piece P1");
    assertThat(faults(piece(false, Optional.empty()), inside.replace("597", "597.02")))
        .containsExactly("p.ngc, line 8: cuts into piece P1 by 0.02");
  }

  /** At two bridges the tool rises to 5 mm above the sheet's bottom, over 18 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"541 18 -13", "541 17 -13", "530 18 -13", "541 18 -12"})
  void bridgesStay(String sizes) {
    String[] size = sizes.split(" ", -1);
    String bridged =
        ROUND
            .replace("G1 X500\n", bridge("559", size[0]))
            .replace("G1 X550\n", "G1 X510\nG1 Z-13\nG1 X528\nG1 Z-18.5\nG1 X550\n");
    Optional<Expected.Bridges> bridges =
        Optional.of(
            new Expected.Bridges(2, Double.parseDouble(size[1]), Double.parseDouble(size[2])));
    String cuts = PASSES.replace("G1 Z-18.5\n" + ROUND, "G1 Z-18.5\n" + bridged);
    List<String> found = faults(piece(true, bridges), cuts);
    assertThat(found.isEmpty()).as("%s: %s", sizes, found).isEqualTo(!sizes.startsWith("530"));
    assertThat(faults(piece(true, Optional.empty()), cuts)).isNotEmpty();
  }

  private static String bridge(String from, String to) {
    return "G1 X" + from + "\nG1 Z-13\nG1 X" + to + "\nG1 Z-18.5\nG1 X500\n";
  }

  @Test
  void aBridgeMustNotBeTooThickNorOneTooMany() {
    String thick = ROUND.replace("G1 X500\n", bridge("559", "541").replace("-13", "-8"));
    String cuts = PASSES.replace("G1 Z-18.5\n" + ROUND, "G1 Z-18.5\n" + thick);
    Optional<Expected.Bridges> one = Optional.of(new Expected.Bridges(1, 18, -8));
    Optional<Expected.Bridges> thinner = Optional.of(new Expected.Bridges(1, 18, -10));
    Optional<Expected.Bridges> none = Optional.of(new Expected.Bridges(0, 18, -8));
    String shallow = cuts.replace("G1 Z-9 F600\n" + ROUND, "G1 Z-7 F600\n" + ROUND);
    assertThat(faults(piece(true, one), shallow)).isEmpty();
    assertThat(faults(piece(true, thinner), shallow))
        .containsExactly("sheet S1: piece P1 has a bridge that is too thick");
    assertThat(faults(piece(true, none), shallow)).anyMatch(it -> it.contains("is not cut at"));
  }
}
