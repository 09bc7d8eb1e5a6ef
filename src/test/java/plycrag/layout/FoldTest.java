package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.skin.Piece;

/** What is cut where two facets meet, against closed forms and against places in the room. */
class FoldTest {
  private static final String FOLDED =
      """
      [wall]
      width = 1200
      fold-edges = "%s"
      [[facet]]
      name = "lower"
      angle = %s
      length = 900
      [[facet]]
      name = "upper"
      angle = %s
      length = 1000
      [inserts]
      when-blocked = "drop"
      """;

  private static Layout folded(String edges, int lower, int upper) {
    return Walls.laidOut(FOLDED.formatted(edges, lower, upper));
  }

  private static List<Member> members(Layout layout, int facet, MemberRole role) {
    return layout.facets().get(facet).members().stream()
        .filter(member -> member.role() == role)
        .toList();
  }

  /** 18 tan 20° = 6.551 and 90 tan 20° = 32.757: a sheet's and a stud's back against its front. */
  @Test
  void bothSidesOfAFoldOf40AreCutAt20() {
    Layout layout = folded("mitred", 0, 40);
    Piece lower = layout.facets().get(0).pieces().get(0);
    assertThat(lower.box().getMaxY()).isEqualTo(900);
    assertThat(lower.back().getEnvelopeInternal().getMaxY()).isCloseTo(906.551, within(1e-3));
    assertThat(lower.blank().getEnvelopeInternal().getHeight()).isCloseTo(906.551, within(1e-3));
    Piece upper = layout.facets().get(1).pieces().get(0);
    assertThat(upper.box().getMinY()).isZero();
    assertThat(upper.back().getEnvelopeInternal().getMinY()).isCloseTo(-6.551, within(1e-3));
    Member stud = members(layout, 0, MemberRole.STUD).get(0);
    assertThat(stud.lowEnd().tilt()).isZero();
    assertThat(stud.highEnd().tilt()).isCloseTo(20, within(1e-3));
    assertThat(stud.far().getEnvelopeInternal().getMaxY() - stud.box().getMaxY())
        .isCloseTo(32.757, within(2e-3));
    assertThat(members(layout, 1, MemberRole.STUD).get(0).lowEnd().tilt())
        .isCloseTo(20, within(1e-3));
    assertThat(members(layout, 0, MemberRole.PLATE).get(1).rip()).isCloseTo(20, within(1e-3));
    assertThat(members(layout, 1, MemberRole.PLATE).get(0).rip()).isCloseTo(-20, within(1e-3));
  }

  @Test
  void whereTheUpperFacetLeansOutLessTheBackIsShorter() {
    Layout layout = folded("mitred", 40, 0);
    Piece lower = layout.facets().get(0).pieces().get(0);
    assertThat(lower.back().getEnvelopeInternal().getMaxY()).isCloseTo(893.449, within(1e-3));
    assertThat(lower.blank().getEnvelopeInternal().getMaxY()).isEqualTo(900);
    assertThat(members(layout, 0, MemberRole.STUD).get(0).highEnd().tilt())
        .isCloseTo(-20, within(1e-3));
  }

  /** 108 tan 20° = 39.309: what stops short so that the frames' backs just meet. */
  @Test
  void squareCutsStopShortOnlyWhereTheyWouldMeet() {
    Layout closing = folded("square", 40, 0);
    Piece lower = closing.facets().get(0).pieces().get(0);
    assertThat(lower.isSquare()).isTrue();
    assertThat(lower.box().getMaxY()).isCloseTo(893.449, within(1e-3));
    Member plate = members(closing, 0, MemberRole.PLATE).get(1);
    assertThat(plate.isSquare()).isTrue();
    assertThat(plate.box().getMaxY()).isCloseTo(900 - 39.309, within(1e-3));
    Layout opening = folded("square", 0, 40);
    assertThat(opening.facets().get(0).pieces().get(0).box().getMaxY()).isEqualTo(900);
    assertThat(members(opening, 0, MemberRole.PLATE).get(1).box().getMaxY()).isEqualTo(900);
  }

  /**
   * In the room, by the sums of the sine and cosine that this test makes itself, the outer faces of
   * both plates and both sheets lie in one plane, whatever the angles; but plates stay square where
   * the upper facet leans out more than 60° further.
   */
  @Property(tries = 100)
  void plateLiesAgainstPlateAndSheetAgainstSheet(
      @ForAll @IntRange(min = 0, max = 60) int lower,
      @ForAll @IntRange(min = -15, max = 90) int upper) {
    Layout layout = folded("mitred", lower, upper);
    double t = layout.wall().sheet().thickness();
    Member under = members(layout, 0, MemberRole.PLATE).get(1);
    Member over = members(layout, 1, MemberRole.PLATE).get(0);
    Envelope underFar = under.far().getEnvelopeInternal();
    Envelope overFar = over.far().getEnvelopeInternal();
    assertMeet(lower, upper, under.box().getMaxY(), over.box().getMinY(), t);
    if (upper - lower <= 60) {
      assertMeet(lower, upper, underFar.getMaxY(), overFar.getMinY(), t + under.depth());
    } else {
      assertThat(under.isSquare() && over.isSquare()).isTrue();
    }
    assertThat(over.depth()).isEqualTo(under.depth());
    Piece below = layout.facets().get(0).pieces().get(0);
    Piece above = layout.facets().get(1).pieces().get(0);
    assertMeet(lower, upper, below.box().getMaxY(), above.box().getMinY(), 0);
    assertMeet(
        lower,
        upper,
        below.back().getEnvelopeInternal().getMaxY(),
        above.back().getEnvelopeInternal().getMinY(),
        t);
  }

  private static void assertMeet(int lower, int upper, double v, double next, double behind) {
    double low = Math.toRadians(lower);
    double high = Math.toRadians(upper);
    double y = v * Math.sin(low) - behind * Math.cos(low);
    double z = v * Math.cos(low) + behind * Math.sin(low);
    double foldY = 900 * Math.sin(low);
    double foldZ = 900 * Math.cos(low);
    assertThat(foldY + next * Math.sin(high) - behind * Math.cos(high)).isCloseTo(y, within(2e-3));
    assertThat(foldZ + next * Math.cos(high) + behind * Math.sin(high)).isCloseTo(z, within(2e-3));
  }

  @Property(tries = 60)
  void nothingOverlapsAndEveryEdgeIsBacked(
      @ForAll @IntRange(min = 0, max = 60) int lower,
      @ForAll @IntRange(min = -15, max = 90) int upper) {
    Layout layout = folded("mitred", lower, upper);
    Found.by("members-overlap", layout).isNothing();
    Found.by("seam-backing", layout).isNothing();
    Found.by("insert-timber", layout).isNothing();
  }

  /** Timber 90 deep stops 90 tan(turn / 2) short of the edges; two thicknesses are 36. */
  @Property(tries = 60)
  void squareCutsAreRefusedWhereTheEdgeWouldStandOutTooFar(
      @ForAll @IntRange(min = 0, max = 60) int lower,
      @ForAll @IntRange(min = -15, max = 90) int upper) {
    Layout layout = folded("square", lower, upper);
    Found.by("members-overlap", layout).isNothing();
    boolean tooFar = 90 * Math.tan(Math.toRadians(lower - upper) / 2) > 36;
    assertThat(Found.by("seam-backing", layout).findings().isEmpty()).isEqualTo(!tooFar);
  }

  @Test
  void marksAreUniqueInTheWall() {
    Layout layout = folded("mitred", 0, 40);
    assertThat(layout.members().stream().map(Member::mark)).doesNotHaveDuplicates();
    assertThat(layout.sheets().stream().map(LaidSheet::mark)).containsExactly("S1");
    assertThat(layout.sheets().stream().flatMap(sheet -> sheet.pieces().stream()))
        .extracting(laid -> laid.piece().mark())
        .containsExactly("P1", "P2");
  }

  /** The plate stops short of a square edge, and its screws hold that edge all the same. */
  @Test
  void screwsAlongASquareFoldKeepTheEdgeSpacing() {
    Layout layout = folded("square", 30, 0);
    Member plate = members(layout, 0, MemberRole.PLATE).get(1);
    List<Double> places =
        layout.facets().get(0).screws().stream()
            .filter(screw -> screw.member().equals(plate.mark()))
            .map(screw -> screw.centre().getX())
            .toList();
    for (int next = 1; next < places.size(); next++) {
      assertThat(places.get(next) - places.get(next - 1)).isLessThanOrEqualTo(150);
    }
    assertThat(places).hasSizeGreaterThan(7);
  }
}
