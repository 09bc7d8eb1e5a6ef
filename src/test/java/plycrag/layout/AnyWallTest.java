package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Envelope;
import plycrag.WallTexts;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.screws.FastenerLine;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Piece;
import plycrag.wall.Sheet;

/** What holds for every wall that can be asked for, by arithmetic in whole micrometres. */
class AnyWallTest {
  /** Between two studs nobody cuts a shorter block, µm. */
  private static final long FILLER = 12_000;

  /** A rectangle, µm. */
  private record Box(long left, long low, long right, long high) {
    static Box of(Envelope box) {
      return new Box(
          micrometres(box.getMinX()),
          micrometres(box.getMinY()),
          micrometres(box.getMaxX()),
          micrometres(box.getMaxY()));
    }

    Span across() {
      return new Span(left, right);
    }

    Span up() {
      return new Span(low, high);
    }
  }

  private record Span(long low, long high) {
    boolean holds(long place) {
      return low <= place && place <= high;
    }

    long shared(Span other) {
      return Math.min(high, other.high) - Math.max(low, other.low);
    }
  }

  @Provide
  Arbitrary<String> walls() {
    return WallTexts.any();
  }

  @Provide
  Arbitrary<String> roomyWalls() {
    return WallTexts.roomy();
  }

  /** All that holds for any wall is asked of one layout, since laying out is what takes time. */
  @Property(tries = 150)
  void anyWall(@ForAll("walls") String toml) {
    Layout layout = Walls.laidOut(toml);
    piecesAndGapsTileTheFacet(layout);
    everyEdgeIsBacked(layout);
    studsStandNoFurtherApartThanTheSpacing(layout);
    screwsStandNoFurtherApartThanTheirSpacing(layout);
    screwsLieOnTheMarkingGrid(layout);
    insertsLieOnTheMarkingGridInOnePiece(layout);
  }

  @Property(tries = 150)
  void anyRoomyWall(@ForAll("roomyWalls") String toml) {
    Layout layout = Walls.laidOut(toml);
    noPieceIsLargerThanItsSheetOrNarrowerThanAsked(layout);
    noMembersOverlapWhereThereIsRoom(layout);
  }

  private static void piecesAndGapsTileTheFacet(Layout layout) {
    FacetLayout facet = layout.facets().get(0);
    List<Box> pieces = boxes(facet.pieces(), Piece::box);
    long gap = micrometres(layout.wall().sheet().seams().gap());
    List<Span> columns = distinct(pieces.stream().map(Box::across).toList());
    List<Span> rows = distinct(pieces.stream().map(Box::up).toList());
    assertFills(columns, micrometres(facet.facet().width()), gap);
    assertFills(rows, micrometres(facet.facet().length()), gap);
    assertThat(pieces).hasSize(columns.size() * rows.size()).doesNotHaveDuplicates();
    assertThat(facet.seams()).hasSize(columns.size() + rows.size() - 2);
  }

  private static void assertFills(List<Span> spans, long total, long gap) {
    assertThat(spans.get(0).low()).isZero();
    assertThat(spans.get(spans.size() - 1).high()).isEqualTo(total);
    for (int next = 1; next < spans.size(); next++) {
      assertThat(spans.get(next).low() - spans.get(next - 1).high()).isEqualTo(gap);
    }
  }

  private static void noPieceIsLargerThanItsSheetOrNarrowerThanAsked(Layout layout) {
    Sheet sheet = layout.wall().sheet();
    assertThat(layout.sheets().stream().flatMap(laid -> laid.pieces().stream()))
        .extracting(LaidPiece::piece)
        .containsExactlyInAnyOrderElementsOf(layout.facets().get(0).pieces());
    for (LaidSheet laid : layout.sheets()) {
      for (LaidPiece piece : laid.pieces()) {
        Envelope box = piece.piece().box();
        assertThat(box.getWidth()).isBetween(200.0 - 1e-3, laid.stock().width() + 1e-6);
        assertThat(box.getHeight()).isBetween(200.0 - 1e-3, laid.stock().height() + 1e-6);
      }
      assertThat(List.of(laid.stock().width(), laid.stock().height()))
          .containsExactlyInAnyOrder(sheet.width(), sheet.length());
    }
  }

  private static void insertsLieOnTheMarkingGridInOnePiece(Layout layout) {
    FacetLayout facet = layout.facets().get(0);
    List<Box> pieces = boxes(facet.pieces(), Piece::box);
    for (Insert insert : facet.inserts()) {
      long u = micrometres(insert.centre().getX());
      long v = micrometres(insert.centre().getY());
      assertThat(u % 1000).isZero();
      assertThat(v % 1000).isZero();
      assertThat(pieces)
          .filteredOn(
              piece -> piece.left() < u && u < piece.right() && piece.low() < v && v < piece.high())
          .hasSizeLessThan(2);
    }
  }

  private static void screwsLieOnTheMarkingGrid(Layout layout) {
    for (Screw screw : layout.screws()) {
      assertThat(micrometres(screw.centre().getX()) % 1000).isZero();
      assertThat(micrometres(screw.centre().getY()) % 1000).isZero();
    }
  }

  /**
   * A hole is as far from its piece's edges on the sheet as on the wall: the same four distances,
   * going round the same way, or the other way where the back lies up.
   */
  @Property(tries = 60)
  void holesLieOnTheSheetAsOnThePiece(
      @ForAll("walls") String toml, @ForAll boolean free, @ForAll boolean back) {
    String nesting =
        "[nesting]\ngrain = \"%s\"\nface-up = \"%s\"\n"
            .formatted(free ? "free" : "kept", back ? "back" : "front");
    for (LaidSheet sheet : Walls.laidOut(toml + nesting).sheets()) {
      for (MachinedHole hole : sheet.holes()) {
        LaidPiece laid = named(sheet.pieces(), one -> one.piece().mark(), hole.marks().piece());
        Box blank = Box.of(laid.piece().blank().getEnvelopeInternal());
        Box cut = Box.of(laid.placement().of(laid.piece().blank()).getEnvelopeInternal());
        List<Long> built = edges(blank, hole.place().getX(), hole.place().getY());
        if (back) {
          Collections.swap(built, 1, 3);
        }
        Collections.rotate(built, laid.placement().turn().degrees() / 90);
        assertThat(edges(cut, hole.spot().x(), hole.spot().y())).isEqualTo(built);
      }
    }
  }

  /** From the lower edge, the right, the upper and the left one. */
  private static List<Long> edges(Box box, double x, double y) {
    return new ArrayList<>(
        List.of(
            micrometres(y) - box.low(),
            box.right() - micrometres(x),
            box.high() - micrometres(y),
            micrometres(x) - box.left()));
  }

  /**
   * Doubled and flat backing of 45 by 90 gives screws of 4.5 mm their distances, whatever the wall,
   * as long as its pieces are no slivers.
   */
  @Property(tries = 100)
  void seamsThatAreBackedBroadlyHoldTheirScrews(@ForAll("roomyWalls") String toml) {
    String broad =
        toml.replaceFirst("section = .*", "section = [45, 90]").replace("shared", "doubled");
    assertThat(Inspection.of(Walls.laidOut(broad)).findings().stream().map(Finding::rule))
        .doesNotContain("screw-sheet-edge", "screw-member-edge");
  }

  @Property(tries = 50)
  void theSameTextIsLaidOutTheSame(@ForAll("walls") String toml) {
    assertThat(Walls.laidOut(toml)).isEqualTo(Walls.laidOut(toml));
  }

  private static String dropping(String toml) {
    return toml.replace("[inserts]", "[inserts]\nwhen-blocked = \"drop\"");
  }

  @Property(tries = 60)
  void everyInsertThatIsKeptIsDrilledOnce(@ForAll("walls") String toml) {
    Layout layout = Walls.laidOut(dropping(toml));
    assertThat(layout.holes().stream().map(MachinedHole::mark).sorted())
        .isEqualTo(layout.facets().get(0).inserts().stream().map(Insert::mark).sorted().toList());
  }

  @Property(tries = 100)
  void marksTellHolesApart(@ForAll("roomyWalls") String toml) {
    FacetLayout facet = Walls.laidOut(dropping(toml)).facets().get(0);
    List<String> marks = new ArrayList<>();
    facet.inserts().forEach(insert -> marks.add(insert.mark()));
    facet.screws().forEach(screw -> marks.add(screw.mark()));
    assertThat(marks).doesNotHaveDuplicates();
  }

  /** Beside a seam off the marking grid, too; two micrometres are what places are rounded by. */
  private static void studsStandNoFurtherApartThanTheSpacing(Layout layout) {
    long greatest = micrometres(layout.wall().frame().studSpacing());
    List<Long> middles =
        layout.facets().get(0).members().stream()
            .filter(member -> member.role() == MemberRole.STUD)
            .map(member -> micrometres(member.box().centre().x))
            .sorted()
            .toList();
    for (int next = 1; next < middles.size(); next++) {
      assertThat(middles.get(next) - middles.get(next - 1)).isLessThanOrEqualTo(greatest + 2);
    }
  }

  private static void screwsStandNoFurtherApartThanTheirSpacing(Layout layout) {
    FacetLayout facet = layout.facets().get(0);
    for (FastenerLine line : facet.fastenerLines()) {
      Member member = named(facet.members(), Member::mark, line.member());
      Box piece = Box.of(named(facet.pieces(), Piece::mark, line.piece()).box());
      double spacing =
          runsAlongAnEdge(Box.of(member.box()), piece, axis(member))
              ? layout.wall().screws().edgeSpacing()
              : layout.wall().screws().fieldSpacing();
      List<Long> places =
          line.screws().stream()
              .map(screw -> screw.centre().getEnvelopeInternal())
              .map(place -> micrometres(axis(member).low(place)))
              .toList();
      for (int next = 1; next < places.size(); next++) {
        assertThat(places.get(next) - places.get(next - 1))
            .isPositive()
            .isLessThanOrEqualTo(micrometres(spacing));
      }
    }
  }

  private static Axis axis(Member member) {
    return member.role().isUpright() ? Axis.UP : Axis.ACROSS;
  }

  private static boolean runsAlongAnEdge(Box member, Box piece, Axis axis) {
    return axis == Axis.UP
        ? member.left() <= piece.left() || member.right() >= piece.right()
        : member.low() <= piece.low() || member.high() >= piece.high();
  }

  private static <T> T named(List<T> things, Function<T, String> mark, String wanted) {
    return things.stream()
        .filter(thing -> mark.apply(thing).equals(wanted))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A bay of at least half the greatest spacing, 105 mm, holds half a stud of 60 and half a flat
   * member of 140; a crowded bay may not, and is refused.
   */
  private static void noMembersOverlapWhereThereIsRoom(Layout layout) {
    List<Box> members = boxes(layout.facets().get(0).members(), Member::box);
    assertThat(members).doesNotHaveDuplicates();
    for (Box one : members) {
      for (Box other : members) {
        boolean overlap =
            one.across().shared(other.across()) > 0 && one.up().shared(other.up()) > 0;
        assertThat(one.equals(other) || !overlap).as("%s and %s", one, other).isTrue();
      }
    }
  }

  private static void everyEdgeIsBacked(Layout layout) {
    FacetLayout facet = layout.facets().get(0);
    List<Box> members = boxes(facet.members(), Member::box);
    for (Box piece : boxes(facet.pieces(), Piece::box)) {
      for (long u : new long[] {piece.left(), piece.right()}) {
        assertThat(coveredTo(piece.up(), members, box -> box.across().holds(u), Box::up))
            .isGreaterThanOrEqualTo(piece.high());
      }
      for (long v : new long[] {piece.low(), piece.high()}) {
        assertThat(coveredTo(piece.across(), members, box -> box.up().holds(v), Box::across))
            .isGreaterThanOrEqualTo(piece.right());
      }
    }
  }

  /** How far along an edge the members that touch it leave no gap for which a block is cut. */
  private static long coveredTo(
      Span edge, List<Box> members, Function<Box, Boolean> touches, Function<Box, Span> along) {
    List<Span> spans =
        members.stream()
            .filter(touches::apply)
            .map(along)
            .sorted(Comparator.comparingLong(Span::low))
            .toList();
    long covered = edge.low();
    for (Span span : spans) {
      if (span.low() - FILLER < covered && covered <= span.high()) {
        covered = span.high();
      }
    }
    return covered;
  }

  private static List<Span> distinct(List<Span> spans) {
    ToLongFunction<Span> low = Span::low;
    TreeSet<Span> sorted =
        new TreeSet<>(Comparator.comparingLong(low).thenComparingLong(Span::high));
    sorted.addAll(spans);
    return List.copyOf(sorted);
  }

  private static <T> List<Box> boxes(List<T> things, Function<T, Envelope> box) {
    return things.stream().map(box).map(Box::of).toList();
  }

  private static long micrometres(double length) {
    return Math.round(length * 1000);
  }
}
