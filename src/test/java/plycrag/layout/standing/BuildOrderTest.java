package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.Walls;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.CoverStrip;
import plycrag.layout.skin.Piece;
import plycrag.layout.standing.BuildStep.Work;

/** Everything goes in once, and nothing before what it needs. */
class BuildOrderTest {

  private static Stream<String> all(Layout layout) {
    return Stream.of(
            layout.members().stream().map(Member::mark),
            layout.hardware().stream().map(Hardware::mark),
            layout.facets().stream().flatMap(facet -> facet.pieces().stream()).map(Piece::mark),
            layout.offcuts().strips().stream().map(CoverStrip::mark),
            layout.inserts().stream().map(Insert::mark),
            layout.screws().stream().map(Screw::mark))
        .flatMap(marks -> marks);
  }

  /** The number of the step in which each part goes in. */
  private static Map<String, Integer> numbers(List<BuildStep> steps) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int at = 0; at < steps.size(); at++) {
      for (String mark : steps.get(at).parts().all().toList()) {
        numbers.put(mark, at);
      }
    }
    return numbers;
  }

  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void everyPartOfASampleGoesInOnce(Path file) {
    Layout layout = Walls.sample(file);
    List<String> added =
        BuildOrder.of(layout).stream().flatMap(step -> step.parts().all()).toList();
    assertThat(added).containsExactlyInAnyOrderElementsOf(all(layout).toList());
  }

  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void nothingIsNeededBeforeItIsThere(Path file) {
    Layout layout = Walls.sample(file);
    List<BuildStep> steps = BuildOrder.of(layout);
    Map<String, Integer> numbers = numbers(steps);
    for (Hardware piece : layout.hardware()) {
      for (String member : piece.members()) {
        assertThat(numbers.get(member))
            .as(piece.mark())
            .isLessThanOrEqualTo(numbers.get(piece.mark()));
      }
    }
    for (FacetLayout facet : layout.facets()) {
      String name = facet.facet().name();
      int sheets = number(steps, Work.SHEETS, name);
      assertThat(number(steps, Work.INSERTS, name)).isLessThan(sheets);
      facet.members().forEach(one -> assertThat(numbers.get(one.mark())).isLessThan(sheets));
      facet.screws().forEach(one -> assertThat(numbers.get(one.mark())).isEqualTo(sheets));
    }
  }

  /** What holds a frame to something else is not there before the frame is. */
  @ParameterizedTest
  @MethodSource("plycrag.TestFiles#samples")
  void whatHoldsAFrameUpComesOnceItIsRaised(Path file) {
    Layout layout = Walls.sample(file);
    List<BuildStep> steps = BuildOrder.of(layout);
    Map<String, Integer> numbers = numbers(steps);
    for (FacetLayout facet : layout.facets()) {
      int raised = number(steps, Work.RAISE, facet.facet().name());
      List<String> own = facet.members().stream().map(Member::mark).toList();
      for (Hardware piece : layout.hardware()) {
        if (piece.members().stream().anyMatch(own::contains) && !own.containsAll(piece.members())) {
          assertThat(numbers.get(piece.mark())).as(piece.mark()).isGreaterThanOrEqualTo(raised);
        }
      }
    }
  }

  private static int number(List<BuildStep> steps, Work work, String facet) {
    for (int at = 0; at < steps.size(); at++) {
      if (steps.get(at).work() == work && steps.get(at).facet().equals(facet)) {
        return at;
      }
    }
    return -1;
  }

  @Test
  void aFreestandingWallByHand() {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 250
            [[facet]]
            name = "main"
            angle = 20
            length = 2000
            width = 1200
            [frame]
            stud-spacing = 700
            [support]
            kind = "freestanding"
            lateral = "knee-braces"
            behind = 800
            """);
    List<BuildStep> steps = BuildOrder.of(layout);
    assertThat(steps)
        .extracting(step -> step.work() + " " + step.parts().members())
        .containsExactly(
            "MARK_OUT []",
            "BUILD_FLAT [PL1, ST1, PL2, ST2, ST3, BL1, BL2]",
            "SIDE_FRAMES [RA1, PO1, HE1, TI1, BC1, RA2, PO2, HE2, TI2, BC2]",
            "SUPPORT [BM1]",
            "SUPPORT [KB1, KB2]",
            "RAISE []",
            "INSERTS []",
            "SHEETS []",
            "EDGES []",
            "MATS []",
            "FIRST_USE []");
    assertThat(steps.get(7).parts().pieces()).containsExactly("P1");
    String frame =
        steps.get(1).parts().hardware().stream()
            .map(mark -> mark.substring(0, 2))
            .distinct()
            .sorted()
            .collect(Collectors.joining(" "));
    assertThat(frame).startsWith("BR");
  }

  /** A plate of 1200 x 1200 x 18 mm at 680 kg/m³ weighs 17.6 kg, and two carry it. */
  @Test
  void theHeaviestThingIsWhatIsLifted() {
    Layout layout =
        Walls.laidOut(
            "[wall]\nwidth = 1200\n[[facet]]\nlength = 1200\n[handling]\nsheet-density = 680\n");
    BuildStep sheets =
        BuildOrder.of(layout).stream()
            .filter(step -> step.work() == Work.SHEETS)
            .findFirst()
            .orElseThrow();
    assertThat(sheets.heaviest()).isCloseTo(1.2 * 1.2 * 0.018 * 680, within(1e-6));
    assertThat(sheets.people(25)).isEqualTo(2);
    assertThat(sheets.people(5)).isEqualTo(4);
  }
}
