package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import plycrag.FaceTexts;
import plycrag.OutlineTexts;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Piece;
import plycrag.layout.skin.Seam;

/** Facets that are no rectangles, and openings in them. */
class OutlineTest {
  private static final String SLOPING =
      """
      [[facet]]
      outline = [[0, 0], [3000, 0], [3000, 1500], [1800, 1500], [0, 700]]
      """;

  @Provide
  Arbitrary<String> outlines() {
    return OutlineTexts.any();
  }

  /**
   * By hand: under the face the frame's sides go straight down, so that a stud of 48 mm stands
   * under the rake's foot, which ends 48 · (1500² + 634²)^½ / 1500 = 52.11 mm across at the face's
   * lower edge; from there the row of blocking behind that edge is whole to the next stud.
   */
  @Test
  void noCrumbOfARowIsLeftBetweenAStudAndARake() {
    String triangle =
        """
        [wall]
        raise = 400
        [[facet]]
        angle = 41
        outline = [[0, 0], [2700, 0], [634, 1500]]
        [sheet]
        lay = "up"
        width = 1000
        length = 2400
        least-width = 50
        start = "lower-left"
        [frame]
        section = [48, 90]
        stud-spacing = 350
        [inserts]
        when-blocked = "drop"
        """;
    Found.by("seam-backing", triangle).isNothing();
    FacetLayout facet = Walls.laidOut(triangle).facets().get(0);
    assertThat(facet.members())
        .filteredOn(member -> member.role() == MemberRole.BLOCKING)
        .first()
        .satisfies(
            row -> {
              assertThat(row.box().getMinX()).isCloseTo(52.111, within(0.001));
              assertThat(row.box().getMinY()).isZero();
              assertThat(row.breadth()).isCloseTo(48, within(1e-9));
            });
    assertThat(facet.members())
        .filteredOn(member -> member.role() == MemberRole.STUD && member.box().getMinX() == 0)
        .singleElement()
        .satisfies(stud -> assertThat(stud.box().getMaxX()).isEqualTo(48));
  }

  /** By hand: 3000 × 1500 less a triangle of 1800 × 800 / 2; without gaps between sheets. */
  @Test
  void piecesOfASlopingTopHaveItsArea() {
    FacetLayout facet = Walls.laidOut(SLOPING + "[sheet]\nseam-gap = 0\n").facets().get(0);
    double area = facet.pieces().stream().mapToDouble(piece -> piece.outline().getArea()).sum();
    assertThat(area).isCloseTo(3000 * 1500 - 1800 * 800 / 2.0, within(1.0));
  }

  /** 1000 × 500 and a circle of 200 are 500 000 and 31 415.9 mm²; its polygon is outside it. */
  @Test
  void openingsAreTakenOut() {
    String toml =
        """
        [wall]
        width = 2400
        [[facet]]
        length = 2400
        [[cutout]]
        left = 700
        low = 1500
        width = 1000
        height = 500
        [[cutout]]
        centre = [500, 500]
        diameter = 200
        [sheet]
        seam-gap = 0
        """;
    FacetLayout facet = Walls.laidOut(toml).facets().get(0);
    double area = facet.pieces().stream().mapToDouble(piece -> piece.outline().getArea()).sum();
    assertThat(2400 * 2400 - area).isBetween(531_415.9, 531_415.9 + 200 * Math.PI * 0.05);
  }

  /** With openings across seams, notches and facets above each other, too. */
  @Provide
  Arbitrary<String> faces() {
    return Arbitraries.oneOf(OutlineTexts.any(), FaceTexts.any(), FaceTexts.notched());
  }

  /** What pieces leave of the face is what lies within half a gap of a seam, to the grid. */
  @Property(tries = 80)
  void piecesAndGapsTileTheOutline(@ForAll("faces") String toml) {
    FacetLayout facet = Walls.laidOut(toml).facets().get(0);
    Polygon outline = facet.facet().outline();
    double grid = 0.001 * outline.getLength();
    Geometry rest = outline;
    double pieces = 0;
    for (Piece piece : facet.pieces()) {
      rest = OverlayNGRobust.overlay(rest, piece.outline(), OverlayNG.DIFFERENCE);
      pieces += piece.outline().getArea();
    }
    assertThat(pieces + rest.getArea()).isCloseTo(outline.getArea(), within(grid));
    List<Geometry> gaps = new ArrayList<>();
    for (Seam seam : facet.seams()) {
      double half = seam.gap() / 2 + 0.001;
      gaps.add(
          seam.axis() == Axis.UP
              ? Shapes.rectangle(
                  seam.middle() - half, seam.low() - 1, seam.middle() + half, seam.high() + 1)
              : Shapes.rectangle(
                  seam.low() - 1, seam.middle() - half, seam.high() + 1, seam.middle() + half));
    }
    Geometry outside =
        gaps.isEmpty()
            ? rest
            : OverlayNGRobust.overlay(rest, UnaryUnionOp.union(gaps), OverlayNG.DIFFERENCE);
    assertThat(outside.getArea()).isLessThan(grid);
  }

  /** A free stud whose slanting end comes 1 mm above the row that backs the lower edge. */
  @ParameterizedTest
  @CsvSource({"-8, 721, 1500, 43", "10, 622, 1641, 42"})
  void aRowIsWholeOverAStudThatEndsInIt(String angle, String across, String up, String breadth) {
    Layout layout =
        Walls.laidOut(
            """
            [wall]
            raise = 400
            [[facet]]
            angle = %s
            outline = [[0, 0], [2700, 0], [%s, %s]]
            [sheet]
            lay = "up"
            width = 1000
            length = 2400
            least-width = 50
            start = "lower-left"
            [frame]
            section = [%s, 90]
            stud-spacing = 350
            [inserts]
            when-blocked = "drop"
            """
                .formatted(angle, across, up, breadth));
    Found.by("seam-backing", layout).isNothing();
    Found.by("members-overlap", layout).isNothing();
  }

  @Property(tries = 50)
  void nothingOverlapsAndEveryEdgeIsBacked(@ForAll("outlines") String toml) {
    Layout layout = Walls.laidOut(toml);
    Found.by("members-overlap", layout).isNothing();
    Found.by("seam-backing", layout).hasNoError();
  }

  /** By the areas alone, without the check's own separating axes. */
  @Property(tries = 30)
  void footprintsShareNoGround(@ForAll("outlines") String toml) {
    List<Member> members = Walls.laidOut(toml).facets().get(0).members();
    for (int at = 0; at < members.size(); at++) {
      for (Member other : members.subList(at + 1, members.size())) {
        Polygon one = members.get(at).footprint();
        Geometry shared = OverlayNGRobust.overlay(one, other.footprint(), OverlayNG.INTERSECTION);
        assertThat(shared.getArea()).isLessThan(0.001 * one.getLength());
      }
    }
  }

  @Property(tries = 40)
  void everyInsertLiesInOnePieceAndOffTheOpenings(@ForAll("outlines") String toml) {
    Layout layout = Walls.laidOut(toml);
    FacetLayout facet = layout.facets().get(0);
    double radius = layout.wall().inserts().body().hole() / 2;
    for (Insert insert : facet.inserts()) {
      assertThat(facet.pieces())
          .filteredOn(piece -> piece.outline().covers(insert.centre().buffer(radius)))
          .hasSize(1);
      facet
          .facet()
          .cutouts()
          .forEach(
              cutout ->
                  assertThat(cutout.shape().distance(insert.centre()))
                      .isGreaterThanOrEqualTo(layout.wall().inserts().setback() - 0.01));
    }
  }

  @Property(tries = 40)
  void screwsKeepTheirDistances(@ForAll("outlines") String toml) {
    Layout layout = Walls.laidOut(toml);
    Found.by("screw-sheet-edge", layout).isNothing();
    Found.by("screw-member-edge", layout).isNothing();
  }
}
