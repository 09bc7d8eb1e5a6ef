package plycrag.layout.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.units.Decimal;
import plycrag.wall.FacetAtAngle;

/** Where the timber of supports stands, by hand and for any wall. */
class WallSupportTest {
  /** A plate stands on the rails to the next mark of a tape, mm; what is left is packed. */
  private static final double GRID = 1;

  private static final String FEW = "[inserts]\npitch-across = 600\npitch-up = 600\n";

  private static WallSupport support(String toml) {
    return Walls.laidOut(toml).support().orElseThrow();
  }

  private static Member member(WallSupport support, String mark) {
    return support.members().stream()
        .map(PlacedMember::member)
        .filter(one -> one.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Plumb, 2000 mm high on rails of 90 mm, its back 108 mm behind the face, posts 600 mm behind
   * that, 90 mm deep. So the face of the posts is at -708 and rails reach from -798 to 0; ties run
   * over the posts to the back at -108, their middle 45 (a plate) + 120 + 45 = 210 below 2090, so
   * that posts end at 1835. A station has a rail, a post, a heel, a tie and a brace; along the wall
   * are a sill, a beam and a brace.
   */
  @Test
  void aPlumbWallOnPostsByHand() {
    WallSupport support =
        support(
            "[wall]\nraise = 90\n[[facet]]\nlength = 2000\nwidth = 1200\n"
                + "[support]\nkind = \"freestanding\"\nfront = 0\nrail-depth = 90\n"
                + FEW);
    assertThat(member(support, "RA1").length()).isCloseTo(798, within(0.01));
    assertThat(member(support, "PO1").length()).isCloseTo(1835 - 90, within(0.01));
    assertThat(member(support, "TI1").length()).isCloseTo(798 - 108, within(0.01));
    assertThat(support.members()).hasSize(2 * 5 + 3);
    assertThat(support.anchors()).isEmpty();
  }

  /**
   * The same with knee braces of 400 mm: each is 400 mm by the root of two over its long points.
   * The beam reaches 40 mm past both posts of 1200 mm. Under it stand two, and one before each
   * post.
   */
  @Test
  void kneeBracesByHand() {
    WallSupport support =
        support(
            "[wall]\nraise = 90\n[[facet]]\nlength = 2000\nwidth = 1200\n"
                + "[support]\nkind = \"freestanding\"\nlateral = \"knee-braces\"\nrail-depth = 90\n"
                + "across = \"knee-braces\"\nknee = 400\n"
                + FEW);
    assertThat(member(support, "BM1").length()).isCloseTo(1280, within(0.01));
    for (int number = 1; number <= 4; number++) {
      Member knee = member(support, "KB" + number);
      assertThat(knee.length()).isCloseTo(400 * Math.sqrt(2), within(0.01));
      assertThat(Math.abs(knee.lowEnd().mitre())).isCloseTo(45, within(0.01));
      assertThat(Math.abs(knee.highEnd().mitre())).isCloseTo(45, within(0.01));
    }
    assertThat(support.members()).hasSize(2 * 4 + 1 + 4);
    assertThat(support.joints().stream().filter(one -> one.kind() == Joint.Kind.SIDE)).hasSize(4);
  }

  /** A back that leans 30° cuts a level tie at 30° from square. */
  @Test
  void tiesEndFlatOnALeaningBack() {
    WallSupport support =
        support(
            "[wall]\nraise = 400\n[[facet]]\nangle = 30\nlength = 2000\nwidth = 1200\n"
                + "[support]\nkind = \"fixed\"\nfixed-to = \"concrete\"\n"
                + FEW);
    assertThat(Math.abs(member(support, "TI1").highEnd().mitre())).isCloseTo(30, within(0.01));
    assertThat(member(support, "TI1").lowEnd().mitre()).isZero();
  }

  /** 60 mm from the ends of 1200 mm, 400 mm apart at most: three gaps of 360 mm. */
  @Test
  void anchorsKeepTheirSpacing() {
    WallSupport support =
        support(
            "[[facet]]\nlength = 2000\nwidth = 1200\n"
                + "[support]\nkind = \"fixed\"\nfixed-to = \"masonry\"\n"
                + FEW);
    assertThat(support.anchors().stream().filter(one -> one.member().equals("LG1")))
        .extracting(anchor -> anchor.place().x())
        .containsExactly(60.0, 420.0, 780.0, 1140.0);
    assertThat(support.anchors().stream().map(Anchor::into)).contains(Anchor.Into.FLOOR);
  }

  /** A single face that leans out by more than 60° ends above the floor and is not fixed to it. */
  @Test
  void whatHangsIsNotAnchoredToTheFloor() {
    WallSupport support =
        support(
            "[wall]\nraise = 1200\n[[facet]]\nangle = 70\nlength = 2000\nwidth = 1200\n"
                + "[support]\nkind = \"hung\"\n[room]\nceiling = 2600\n"
                + "ceiling-members = \"joists\"\njoist-section = [50, 200]\njoist-span = 3000\n"
                + FEW);
    assertThat(support.anchors()).isNotEmpty().allMatch(one -> one.into() == Anchor.Into.JOIST);
  }

  /** A chain from a hinge's circle: by the law of cosines, from the hinge as the common corner. */
  @Test
  void tethersAreAsLongAsTheLawOfCosinesSays() {
    Layout layout =
        Walls.laidOut(
            "[wall]\nwidth = 1200\nfold-edges = \"square\"\n"
                + "[[facet]]\nname = \"kick\"\nlength = 300\n"
                + "[[facet]]\nname = \"main\"\nangle = 30\nlength = 1800\n"
                + "[support]\nkind = \"hinged\"\nfixed-to = \"masonry\"\nangles = [20, 45]\n"
                + "anchor-height = 2400\n"
                + FEW);
    Tether tether = layout.support().orElseThrow().tethers().get(0);
    double behind = 108;
    double radius = Math.hypot(tether.v(), behind);
    double toAnchor = Math.hypot(tether.anchor().y(), tether.anchor().z() - 300);
    for (double angle : List.of(20.0, 45.0)) {
      FacetAtAngle main =
          FacetAtAngle.of(
                  layout.wall(), layout.facets().stream().map(FacetLayout::facet).toList(), angle)
              .get(1);
      Vector3 held = main.at(new Vector3(tether.u(), tether.v(), behind));
      double up = Math.toDegrees(Math.atan2(tether.anchor().z() - 300, tether.anchor().y()));
      double arm = 90 - angle + Math.toDegrees(Math.atan2(behind, tether.v()));
      double between = Math.toRadians(up - arm);
      double length =
          Math.sqrt(
              radius * radius + toAnchor * toAnchor - 2 * radius * toAnchor * Math.cos(between));
      assertThat(held.minus(tether.anchor()).length()).isCloseTo(length, within(1e-6));
    }
  }

  @ParameterizedTest
  @CsvSource({"freestanding, ''", "fixed, 'fixed-to = \"masonry\"'"})
  void cornersAreHeldWallByWall(String kind, String more) {
    Layout layout =
        Walls.laidOut(
            "[wall]\nraise = 200\n[[facet]]\nname = \"one\"\nwidth = 1500\nlength = 1800\n"
                + "[[facet]]\nname = \"two\"\nbeside = \"one\"\nturn = 90\nwidth = 1500\n"
                + "length = 1800\n[support]\nkind = \""
                + kind
                + "\"\nbehind = 150\n"
                + more
                + "\n"
                + FEW);
    assertClosed(layout);
  }

  @Property(tries = 25)
  void jointsOfAnyFreestandingWallClose(
      @ForAll @DoubleRange(min = -15, max = 55) double angle,
      @ForAll @IntRange(min = 900, max = 2600) int length,
      @ForAll @IntRange(min = 300, max = 1500) int bay,
      @ForAll @IntRange(min = 500, max = 1500) int behind) {
    assertSound(
        wall(angle, length, "")
            + "[support]\nkind = \"freestanding\"\nbay = "
            + bay
            + "\nbehind = "
            + behind
            + "\n");
  }

  @Property(tries = 25)
  void jointsOfAnyFixedWallClose(
      @ForAll @DoubleRange(min = -15, max = 55) double angle,
      @ForAll @IntRange(min = 900, max = 2600) int length,
      @ForAll @IntRange(min = 300, max = 600) int kick) {
    assertSound(
        wall(angle, length, "[[facet]]\nname = \"kick\"\nlength = " + kick + "\n")
            + "[support]\nkind = \"fixed\"\nfixed-to = \"masonry\"\n");
  }

  @Property(tries = 25)
  void jointsOfAnyHungWallClose(
      @ForAll @DoubleRange(min = 22, max = 85) double angle,
      @ForAll @IntRange(min = 900, max = 2600) int length,
      @ForAll @IntRange(min = 300, max = 600) int kick) {
    assertSound(
        wall(angle, length, "[[facet]]\nname = \"kick\"\nlength = " + kick + "\n")
            + "[support]\nkind = \"hung\"\n[room]\nceiling = 3400\n"
            + "ceiling-members = \"joists\"\njoist-section = [50, 200]\njoist-span = 3000\n");
  }

  /** Posts, rails that reach behind them, and what holds the moving part on the outer posts. */
  @Property(tries = 15)
  void jointsOfAnyHingedWallOnPostsClose(
      @ForAll @IntRange(min = 5, max = 45) int angle,
      @ForAll @IntRange(min = 1200, max = 2400) int length,
      @ForAll @IntRange(min = 300, max = 450) int kick,
      @ForAll @IntRange(min = 500, max = 1200) int behind) {
    String toml =
        wall(angle, length, "[[facet]]\nname = \"kick\"\nlength = " + kick + "\n")
                .replace("raise = 0", "raise = 140\nfold-edges = \"square\"")
            + "[support]\nkind = \"hinged\"\nfixed-to = \"posts\"\nbehind = "
            + behind
            + "\n";
    assertSound(toml);
    WallSupport support = Walls.laidOut(toml).support().orElseThrow();
    assertThat(support.anchors()).isEmpty();
    List<Double> fronts =
        support.members().stream()
            .filter(placed -> placed.member().role() == MemberRole.POST)
            .map(post -> post.body().near().stream().mapToDouble(Vector3::y).max().orElseThrow())
            .toList();
    assertThat(support.tethers()).hasSize(6);
    assertThat(support.tethers())
        .allSatisfy(
            tether -> assertThat(tether.anchor().y()).isCloseTo(fronts.get(0), within(1e-6)));
  }

  private static String wall(double angle, int length, String kick) {
    return "[wall]\nwidth = 1830\nraise = "
        + (kick.isEmpty() ? 250 : 0)
        + "\n"
        + kick
        + "[[facet]]\nname = \"main\"\nangle = "
        + Decimal.of(angle, 3)
        + "\nlength = "
        + length
        + "\n"
        + FEW;
  }

  private static void assertSound(String toml) {
    Layout layout = Walls.laidOut(toml);
    assertThat(layout.support().orElseThrow().parts().get(0).unheld()).as(toml).isEmpty();
    assertThat(layout.support().orElseThrow().parts().get(0).unmet()).as(toml).isEmpty();
    assertClosed(layout);
    Found.by("members-overlap", layout).isNothing();
  }

  /** The place of every joint lies on both members, and both touch without cutting in. */
  private static void assertClosed(Layout layout) {
    WallSupport support = layout.support().orElseThrow();
    Map<String, PlacedMember> standing =
        support.members().stream()
            .collect(Collectors.toMap(one -> one.member().mark(), Function.identity()));
    assertThat(support.joints()).isNotEmpty();
    for (Joint joint : support.joints()) {
      PlacedMember first = standing.get(joint.first());
      Solid other =
          standing.containsKey(joint.second())
              ? standing.get(joint.second()).body()
              : inFrame(layout, joint.second());
      boolean packed = first.member().role() == MemberRole.RAIL;
      double gap = packed ? GRID : 0;
      assertThat(first.body().overlap(other)).as(joint.toString()).isBetween(-0.1 - gap, 0.1);
    }
  }

  private static Solid inFrame(Layout layout, String mark) {
    for (FacetLayout facet : layout.facets()) {
      for (Member member : facet.members()) {
        if (member.mark().equals(mark)) {
          double thickness = layout.wall().sheet().thickness();
          return member.body(thickness).mapped(facet.facet().plane()::toRoom);
        }
      }
    }
    throw new AssertionError(mark);
  }

  /** What meets one facet must find the stud of the next, however the patterns lie on them. */
  @Property(tries = 15)
  void studsOfFacetsThatMeetStayInLine(
      @ForAll @IntRange(min = 90, max = 300) int pitch,
      @ForAll @IntRange(min = 1500, max = 3600) int width) {
    String wall =
        """
        [wall]
        width = %d
        [[facet]]
        name = "kick"
        angle = 0
        length = 300
        [[facet]]
        name = "main"
        angle = 40
        length = 2000
        [support]
        kind = "hung"
        [room]
        ceiling = 2400
        ceiling-members = "joists"
        [inserts]
        setback = 45
        pitch-across = %d
        """;
    assertThat(support(wall.formatted(width, pitch)).parts().get(0).unheld()).isEmpty();
    assertThat(support(wall.formatted(width, pitch)).parts().get(0).unmet()).isEmpty();
  }
}
