package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.Walls;
import plycrag.geometry.Direction;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.SupportPart;
import plycrag.layout.support.WallSupport;
import plycrag.wall.buying.Section;

/** Studs of 45 by 90 mm on rails of 45 by 140, or on ledgers; and what is put beside them. */
class MemberSectionsTest {
  private static final Section STUD = new Section(45, 90);
  private static final Section RAIL = new Section(45, 140);

  private static final String FACE =
      """
      [wall]
      width = 1200
      raise = 200
      [[facet]]
      angle = 30
      length = 1500
      [frame]
      section = [45, 90]
      stud-spacing = 600
      [inserts]
      pattern = "none"
      [support]
      behind = 600
      """;

  private static final Layout STANDING = Walls.laidOut(FACE + "kind = \"freestanding\"\n");

  private static Section of(Layout layout, String mark) {
    return layout.members().stream()
        .filter(member -> member.mark().equals(mark))
        .map(layout.sections()::of)
        .findFirst()
        .orElseThrow();
  }

  /** The wall with one more member in its support, square or with its back shifted across. */
  private static Layout with(Direction direction, Polygon footprint, Polygon far, double depth) {
    SupportPart support = STANDING.support().orElseThrow().parts().get(0);
    Member member =
        new Member("BC99", MemberRole.BRACE, Fixity.SUPPORT, direction, footprint, far, depth);
    List<PlacedMember> members = new ArrayList<>(support.members());
    FacetPlane plane = support.members().get(0).plane();
    members.add(new PlacedMember(member, plane, 0));
    return new Layout(
        STANDING.wall(),
        STANDING.facets(),
        Optional.of(
            new WallSupport(
                List.of(
                    new SupportPart(
                        support.run(),
                        support.facets(),
                        support.asked(),
                        support.axes(),
                        support.buildingFace(),
                        members,
                        support.joints(),
                        support.anchors(),
                        support.tethers(),
                        support.unheld(),
                        support.unmet(),
                        support.sways(),
                        support.widestBay())))),
        STANDING.sheets(),
        STANDING.faces(),
        STANDING.offcuts(),
        STANDING.fixings(),
        STANDING.hardware());
  }

  private static Layout with(Polygon footprint, double depth) {
    return with(Direction.LEVEL, footprint, footprint, depth);
  }

  /** A brace leans, and its ends are cut aslant: between its long sides it is as deep as told. */
  @Test
  void eachIsOfTheSectionThatItIsToldToBe() {
    assertThat(of(STANDING, "ST1")).isEqualTo(STUD);
    assertThat(of(STANDING, "RA1")).isEqualTo(RAIL);
    assertThat(of(STANDING, "PO1")).isEqualTo(STUD);
    Layout deep = Walls.laidOut(FACE + "kind = \"freestanding\"\nbrace-depth = 120\n");
    assertThat(of(deep, "BC1")).isEqualTo(new Section(45, 120));
    assertThat(deep.sections().members().keySet())
        .containsExactly(STUD, RAIL, new Section(45, 120));
  }

  @Test
  void ledgersAreOfTheirOwn() {
    Layout fixed =
        Walls.laidOut(
            FACE + "kind = \"fixed\"\nfixed-to = \"masonry\"\nledger-section = [60, 120]\n");
    assertThat(of(fixed, "LG1")).isEqualTo(new Section(60, 120));
    assertThat(of(fixed, "TI1")).isEqualTo(STUD);
    assertThat(fixed.sections().members().keySet()).containsExactly(STUD, new Section(60, 120));
  }

  /** 45 by 140 laid flat or on edge is the same timber; so is what is as deep as the frame. */
  @Test
  void whatIsAlikeIsOneSection() {
    Layout alike =
        Walls.laidOut(FACE + "kind = \"freestanding\"\nrail-depth = 90\npost-depth = 90\n");
    assertThat(alike.sections().members().keySet()).containsExactly(STUD);
    assertThat(alike.sections().members().get(STUD)).isEqualTo(alike.members());
    assertThat(of(with(Shapes.rectangle(0, 0, 800, 45), 140), "BC99")).isEqualTo(RAIL);
  }

  /** 40 by 80 comes from 45 by 90, not from the greater 45 by 140; 40 by 100 from that. */
  @Test
  void aWedgeComesFromTheLeastThatIsTakenAnyway() {
    Polygon wedge =
        Shapes.polygon(
            List.of(new Coordinate(0, 0), new Coordinate(300, 0), new Coordinate(300, 80)));
    assertThat(of(with(wedge, 40), "BC99")).isEqualTo(STUD);
    assertThat(of(with(Shapes.rectangle(0, 0, 300, 100), 40), "BC99")).isEqualTo(RAIL);
  }

  /** Its back lies 30 further up than its front: together 80 across. */
  @Test
  void bevelsLieInTheSection() {
    Layout bevelled =
        with(
            Direction.LEVEL, Shapes.rectangle(0, 0, 500, 50), Shapes.rectangle(0, 30, 500, 80), 45);
    PlacedMember last = bevelled.standing().get(bevelled.standing().size() - 1);
    assertThat(last.section().smaller()).isEqualTo(45);
    assertThat(last.section().greater()).isCloseTo(80, within(1e-9));
    assertThat(of(bevelled, "BC99")).isEqualTo(STUD);
  }

  /** Nothing else that is taken holds 45 by 200: it is listed as it measures. */
  @Test
  void whatNoneHoldsIsASectionItself() {
    Layout great = with(Shapes.rectangle(0, 0, 500, 200), 45);
    assertThat(of(great, "BC99")).isEqualTo(new Section(45, 200));
    assertThat(great.sections().members().keySet())
        .containsExactly(STUD, RAIL, new Section(45, 200));
  }
}
