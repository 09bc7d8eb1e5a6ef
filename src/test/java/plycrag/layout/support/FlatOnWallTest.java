package plycrag.layout.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.joints.Hardware;
import plycrag.layout.standing.BuildOrder;
import plycrag.layout.standing.BuildStep;
import plycrag.layout.standing.BuildStep.Work;

/** A plumb frame that is fixed to a building's wall without space behind it. */
class FlatOnWallTest {
  private static String wall(String base, String more) {
    return "[[facet]]\nlength = 2400\nwidth = 2400\n"
        + "[inserts]\npitch-across = 200\npitch-up = 200\n"
        + "[support]\nkind = \"fixed\"\nbehind = 0\nfixed-to = \""
        + base
        + "\"\n"
        + more;
  }

  private static List<Anchor> on(Layout layout, String member) {
    return layout.support().orElseThrow().anchors().stream()
        .filter(anchor -> anchor.member().equals(member))
        .toList();
  }

  /**
   * A sheet of 18 mm and a frame of 90 mm: the building's face is 108 mm behind the climbing face.
   * Plates are 45 mm broad, the upper one below 2400, so that their middles are at 22.5 and 2377.5.
   */
  @ParameterizedTest
  @ValueSource(strings = {"masonry", "concrete", "studs"})
  void itIsFixedThroughItsPlates(String base) {
    Layout layout = Walls.laidOut(wall(base, ""));
    assertThat(layout.standing()).isEmpty();
    FacetLayout facet = layout.facets().get(0);
    double back = layout.wall().sheet().thickness() + 90;
    List<Member> plates =
        facet.members().stream().filter(one -> one.role() == MemberRole.PLATE).toList();
    assertThat(plates).hasSize(2);
    assertThat(layout.support().orElseThrow().anchors())
        .hasSizeGreaterThanOrEqualTo(8)
        .allSatisfy(anchor -> assertThat(anchor.place().y()).isCloseTo(-back, within(1e-9)));
    for (Member plate : plates) {
      for (Anchor anchor : on(layout, plate.mark())) {
        assertThat(anchor.place().z()).isCloseTo(plate.box().centre().y, within(1e-9));
        assertThat(facet.screws())
            .filteredOn(screw -> screw.member().equals(plate.mark()))
            .allMatch(screw -> Math.abs(screw.centre().getX() - anchor.place().x()) >= 20);
        assertThat(facet.members())
            .filteredOn(member -> member.role().isUpright())
            .allMatch(
                member ->
                    anchor.place().x() < member.box().getMinX() - 15
                        || anchor.place().x() > member.box().getMaxX() + 15);
      }
    }
    Found.by("support-holds", layout).isNothing();
    Found.by("hardware-clear", layout).isNothing();
  }

  /** Sheets lie over the heads: 6.4 mm of a head and 3 mm of a washer are let in by 10 mm. */
  @Test
  void headsAreLetInUnderTheSheets() {
    Layout layout = Walls.laidOut(wall("concrete", ""));
    assertThat(layout.hardware())
        .filteredOn(one -> one.form() instanceof Hardware.Anchored)
        .isNotEmpty()
        .allSatisfy(
            one -> assertThat(((Hardware.Anchored) one.form()).sunk()).isCloseTo(10, within(1e-9)));
  }

  /** Where the building's studs are 600 mm apart from 300 mm on, so are the anchors, within 10. */
  @Test
  void inABuildingsStudsItIsFixedWhereTheyAre() {
    Layout layout = Walls.laidOut(wall("studs", "first-stud = 300\nbuilding-stud-spacing = 600\n"));
    assertThat(layout.support().orElseThrow().anchors())
        .isNotEmpty()
        .allSatisfy(
            anchor ->
                assertThat(Math.abs((anchor.place().x() - 300) % 600))
                    .matches(off -> off <= 10 || off >= 590));
  }

  @Test
  void withoutTwoStudsBehindItItIsRefused() {
    Found.by("support-holds", wall("studs", "first-stud = 1200\nbuilding-stud-spacing = 1200\n"))
        .isError(true)
        .says("plate PL1 meets 1 place to fix it to, and two are the least");
  }

  /**
   * An upper edge that slants is fixed along its rake as the foot is along its plate: every anchor
   * goes through the middle of what it holds, 22.5 mm from both of its sides.
   */
  @Test
  void anUpperEdgeThatSlantsIsFixedAlongItsRake() {
    Layout layout =
        Walls.laidOut(
            wall("concrete", "")
                .replace(
                    "length = 2400\nwidth = 2400",
                    "outline = [[0, 0], [2400, 0], [2400, 1800], [0, 2300]]"));
    FacetLayout facet = layout.facets().get(0);
    for (MemberRole role : List.of(MemberRole.PLATE, MemberRole.RAKE)) {
      Member member =
          facet.members().stream().filter(one -> one.role() == role).findFirst().orElseThrow();
      assertThat(on(layout, member.mark()))
          .as(role.word())
          .hasSizeGreaterThanOrEqualTo(4)
          .allSatisfy(
              anchor ->
                  assertThat(
                          member
                              .footprint()
                              .getExteriorRing()
                              .distance(Shapes.point(anchor.place().x(), anchor.place().z())))
                      .isCloseTo(22.5, within(1e-3)));
    }
    Found.by("support-holds", layout).isNothing();
    Found.by("hardware-clear", layout).isNothing();
  }

  @Test
  void whatLeansDoesNotLieOnAWall() {
    Found.by(
            "support-holds",
            """
            [[facet]]
            angle = 10
            [inserts]
            pattern = "none"
            [support]
            kind = "fixed"
            behind = 0
            fixed-to = "concrete"
            """)
        .isError(true)
        .says(
            "the upper edge of facet main is held by nothing: it leans out by 10°, and does not"
                + " lie flat on the building's wall")
        .suggests(
            "let it stand plumb ([[facet]] angle = 0), or leave space behind it for ties"
                + " ([support] behind = 600)");
  }

  @Test
  void itIsFixedAsSoonAsItStands() {
    List<Work> works =
        BuildOrder.of(Walls.laidOut(wall("concrete", ""))).stream().map(BuildStep::work).toList();
    assertThat(works)
        .containsSubsequence(
            Work.BUILD_FLAT, Work.RAISE, Work.FIX, Work.INSERTS, Work.SHEETS, Work.FIRST_USE);
  }
}
