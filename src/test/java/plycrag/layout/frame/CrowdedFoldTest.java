package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;

/** Folds and corners where the timber that lies in them has no room for the sheets' screws. */
class CrowdedFoldTest {
  private static List<Finding> errors(Layout layout) {
    return Inspection.of(layout).findings().stream().filter(Finding::isError).toList();
  }

  private static Layout folded(String unit, double lower, double upper) {
    return Walls.laidOut(
        """
        [wall]
        unit = "%s"
        raise = "60 mm"
        width = "2440 mm"
        [[facet]]
        name = "quay"
        angle = %s
        length = "1200 mm"
        [[facet]]
        name = "loft"
        angle = %s
        length = "1200 mm"
        """
            .formatted(unit, lower, upper));
  }

  @ParameterizedTest
  @CsvSource({
    "mm, 0, 40",
    "mm, 0, 60",
    "mm, 0, 90",
    "mm, 20, 75",
    "mm, 30, 90",
    "mm, 40, -10",
    "in, 0, 20",
    "in, 0, 30",
    "in, 0, 50",
    "in, 30, 0"
  })
  void everyFoldIsScrewedWithWhatIsStandard(String unit, double lower, double upper) {
    assertThat(errors(folded(unit, lower, upper))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"90, 0", "60, 10", "45, 20"})
  void everyInsideCornerIsScrewedWithWhatIsStandard(int turn, int angle) {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 60
            width = 2440
            [[facet]]
            name = "port"
            angle = %d
            length = 2440
            [[facet]]
            name = "starboard"
            beside = "port"
            turn = %d
            angle = %d
            length = 2440
            """
                .formatted(angle, turn, angle));
    assertThat(errors(layout)).isEmpty();
  }

  /**
   * By hand: a fold of 90° halves at 45°, so timber of 45 mm reaches 18 mm beyond the fold and 27
   * mm on this side of it; 13.5 mm to the edge and 13.5 mm to its side leave no place on a grid of
   * 1 mm. Screws go into square blocking beside it instead, as close as along an edge.
   */
  @Test
  void screwsGoIntoBlockingBesideAPlateWithoutRoom() {
    FacetLayout quay = folded("mm", 0, 90).facets().get(0);
    Member plate =
        quay.members().stream()
            .filter(member -> member.role() == MemberRole.PLATE && member.box().getMaxY() > 1200)
            .findFirst()
            .orElseThrow();
    assertThat(plate.box().getMinY()).isEqualTo(1200 + 18 - 45);
    assertThat(quay.screws()).noneMatch(screw -> screw.member().equals(plate.mark()));
    List<Member> beside =
        quay.members().stream()
            .filter(member -> member.role() == MemberRole.BLOCKING)
            .filter(member -> Math.abs(member.box().getMaxY() - plate.box().getMinY()) < 1)
            .toList();
    assertThat(beside).hasSizeGreaterThan(3);
    assertThat(beside)
        .allSatisfy(
            member ->
                assertThat(quay.screws()).anyMatch(screw -> screw.member().equals(member.mark())));
  }

  /** A fold of 20° leaves room, and nothing is added. */
  @Test
  void nothingIsAddedWhereThereIsRoom() {
    assertThat(folded("mm", 0, 20).facets().get(0).members())
        .noneMatch(member -> member.role() == MemberRole.BLOCKING && member.box().getMinY() > 600);
  }
}
