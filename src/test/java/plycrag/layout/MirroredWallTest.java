package plycrag.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import plycrag.Walls;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.support.Anchor;
import plycrag.read.WallMaker;
import plycrag.units.Decimal;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.InsertPosition;
import plycrag.wall.MirroredWall;
import plycrag.wall.Wall;

/** The image of a wall, facet by facet as far from the right as the wall is from the left. */
class MirroredWallTest {
  private static final String SLANTING =
      """
      raise = 300
      [[facet]]
      name = "main"
      angle = 25
      outline = [[0, 0], [2440, 0], [2440, 2000], [900, 2600], [0, 2600]]
      [[cutout]]
      left = 1500
      low = 700
      width = 400
      height = 500
      """;

  /** Facets whose sides stand on the marking grid. */
  private static final String PLUMB =
      """
      [[facet]]
      name = "one"
      width = 1900
      length = 2000
      [[facet]]
      name = "two"
      beside = "one"
      turn = 90
      width = 1300
      length = 1500
      [[facet]]
      name = "three"
      beside = "two"
      turn = -90
      width = 700
      length = 1800
      """;

  /** Facets whose sides do not. */
  private static final String CORNER =
      """
      [[facet]]
      name = "kick"
      width = 2100
      length = 300
      [[facet]]
      name = "left"
      angle = 20
      width = 2100
      length = 1900
      [[facet]]
      name = "right"
      beside = "kick"
      turn = 60
      angle = 10
      width = 1300
      length = 2200
      [[facet]]
      name = "last"
      beside = "right"
      turn = -40
      width = 1100
      length = 1500
      """;

  static Stream<String> walls() {
    return Stream.of(
        SLANTING,
        SLANTING + "[inserts]\nwhen-blocked = \"report\"\n",
        SLANTING + "[inserts]\nwhen-blocked = \"nudge\"\npattern = \"offset\"\n",
        SLANTING + "[inserts]\nwhen-blocked = \"shift\"\npitch-across = 170\n",
        SLANTING + "[inserts]\nwhen-blocked = \"drop\"\npitch-across = 150\n",
        SLANTING + "[inserts]\npattern = \"density\"\n",
        SLANTING + "[inserts]\npattern = \"scatter\"\n",
        SLANTING + "[inserts]\nsymmetry = \"left-right\"\n",
        SLANTING
            + "[inserts]\npattern = \"lines\"\ncolumns = [120, 431, 800]\nrows = [200, 900]\n"
            + "[[zone]]\nname = \"z\"\nleft = 1000\nlow = 1300\nwidth = 700\nheight = 500\n"
            + "pattern = \"grid\"\npitch-across = 90\npitch-up = 90\n",
        SLANTING + "[sheet]\nstart = \"upper-left\"\nlay = \"up\"\n",
        SLANTING + "[frame]\nstud-spacing = 450\n",
        PLUMB,
        PLUMB + "[support]\nkind = \"freestanding\"\n");
  }

  static Stream<String> turned() {
    return Stream.of(SLANTING, PLUMB, CORNER);
  }

  private static String file(String wall, boolean mirrored) {
    return "[wall]\nmirrored = " + mirrored + "\n" + wall;
  }

  @ParameterizedTest
  @MethodSource("walls")
  void everythingIsAsFarFromTheOtherSide(String wall) {
    Layout drawn = Walls.laidOut(file(wall, false));
    Layout image = Walls.laidOut(file(wall, true));
    assertThat(image.facets()).hasSameSizeAs(drawn.facets());
    for (FacetLayout facet : drawn.facets()) {
      FacetLayout other =
          image.facets().stream()
              .filter(one -> one.facet().name().equals(facet.facet().name()))
              .findFirst()
              .orElseThrow();
      double width = facet.facet().width();
      assertThat(places(inserts(other), 0, 1)).isEqualTo(places(inserts(facet), width, -1));
      assertThat(places(members(other), 0, 1)).isEqualTo(places(members(facet), width, -1));
      assertThat(places(pieces(other), 0, 1)).isEqualTo(places(pieces(facet), width, -1));
    }
  }

  private static Stream<Geometry> inserts(FacetLayout facet) {
    return facet.inserts().stream().map(one -> one.centre());
  }

  private static Stream<Geometry> members(FacetLayout facet) {
    return facet.members().stream().flatMap(one -> Stream.of(one.footprint(), one.far()));
  }

  private static Stream<Geometry> pieces(FacetLayout facet) {
    return facet.pieces().stream().flatMap(one -> Stream.of(one.outline(), one.back()));
  }

  /** Their corners to a hundredth of a millimetre, in an order of their own. */
  private static List<String> places(Stream<Geometry> things, double from, int way) {
    return things
        .map(
            thing ->
                Stream.of(thing.getCoordinates())
                    .distinct()
                    .map(corner -> text(corner, from, way))
                    .sorted()
                    .toList()
                    .toString())
        .sorted()
        .toList();
  }

  private static String text(Coordinate corner, double from, int way) {
    return Decimal.of(from + way * corner.x, 1) + "/" + Decimal.of(corner.y, 1);
  }

  private static Wall wall(String text, boolean mirrored) {
    return WallMaker.of(Walls.parameters(file(text, mirrored)), List.of());
  }

  /** Seen from above, x of every corner of a face becomes as much less than the first's width. */
  @ParameterizedTest
  @MethodSource("turned")
  void facesStandTheOtherWayRound(String text) {
    Wall drawn = wall(text, false);
    Wall image = wall(text, true);
    assertThat(inRoom(image, 0, 1)).isEqualTo(inRoom(drawn, drawn.frontWidth(), -1));
    assertThat(folds(image, Fold.Place.LEFT)).isEqualTo(folds(drawn, Fold.Place.RIGHT));
    assertThat(folds(image, Fold.Place.RIGHT)).isEqualTo(folds(drawn, Fold.Place.LEFT));
  }

  private static List<String> folds(Wall wall, Fold.Place place) {
    return wall.facets().stream()
        .flatMap(
            facet ->
                facet.folds(place).stream()
                    .map(fold -> facet.name() + fold.other() + Decimal.of(fold.turn(), 2)))
        .sorted()
        .toList();
  }

  private static List<String> inRoom(Wall wall, double from, int way) {
    return wall.facets().stream()
        .map(
            facet ->
                facet.name()
                    + Stream.of(facet.boundary().getCoordinates())
                        .distinct()
                        .map(at -> facet.plane().toRoom(new Vector3(at.x, at.y, 0)))
                        .map(
                            at ->
                                Decimal.of(from + way * at.x(), 1)
                                    + "/"
                                    + Decimal.of(at.y(), 1)
                                    + "/"
                                    + Decimal.of(at.z(), 1))
                        .sorted()
                        .toList())
        .sorted()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("turned")
  void theImageOfTheImageIsTheWall(String text) {
    Wall wall = wall(text, false);
    Wall again = MirroredWall.of(MirroredWall.of(wall));
    assertThat(again.face().mirrored()).isFalse();
    assertThat(again.facets()).hasSameSizeAs(wall.facets());
    assertThat(inRoom(again, 0, 1)).isEqualTo(inRoom(wall, 0, 1));
    for (int at = 0; at < wall.facets().size(); at++) {
      assertThat(again.facets().get(at).boundary().equalsExact(wall.facets().get(at).boundary()))
          .isTrue();
      assertThat(again.facets().get(at).folds()).isEqualTo(wall.facets().get(at).folds());
      assertThat(again.facets().get(at).cutouts()).isEqualTo(wall.facets().get(at).cutouts());
    }
    assertThat(again.sheet()).isEqualTo(wall.sheet());
  }

  /** Listed places are asked for as far from the right. */
  @Test
  void listedPlacesAreMirroredToo() {
    String listed =
        """
        [[facet]]
        name = "main"
        width = 2000
        [inserts]
        pattern = "file"
        positions = "holes.csv"
        """;
    List<InsertPosition> positions = List.of(new InsertPosition("main", 350, 700));
    Wall image = WallMaker.of(Walls.parameters(file(listed, true)), positions);
    assertThat(image.positions()).containsExactly(new InsertPosition("main", 1650, 700));
    assertThat(LayoutPlan.of(image).inserts().get(0).mark()).isEqualTo("main 165/70");
  }

  /** What stands in the room goes with it. */
  @Test
  void theRoomIsMirroredToo() {
    String room =
        """
        [[facet]]
        width = 2000
        [room]
        left = 300
        right = 700
        ceiling = 2600
        ceiling-pitch-across = 5
        floor-fall = 8
        [[obstacle]]
        left = -200
        width = 500
        """;
    Wall wall = wall(room, true);
    assertThat(wall.room().sides().left()).contains(700.0);
    assertThat(wall.room().sides().right()).contains(300.0);
    assertThat(wall.room().floor().fall()).isEqualTo(-8);
    assertThat(wall.room().obstacles().get(0).corner().left()).isEqualTo(1700);
    assertThat(wall.room().ceiling().plane().orElseThrow().at(2000, 0)).isEqualTo(2600);
  }

  /** Walls in a corner, each with studs of the building at 150, 650, … from its own left. */
  @Test
  void studsOfTheBuildingAreMirroredBehindEachWall() {
    String fixed =
        """
        [[facet]]
        name = "one"
        angle = 10
        width = 1900
        length = 2000
        [[facet]]
        name = "two"
        beside = "one"
        turn = 90
        angle = 10
        width = 1300
        length = 2000
        [support]
        kind = "fixed"
        fixed-to = "studs"
        first-stud = 150
        building-stud-spacing = 500
        """;
    Layout drawn = LayoutPlan.of(wall(fixed, false));
    Layout image = LayoutPlan.of(wall(fixed, true));
    assertThat(studs(drawn, 1, false)).isNotEmpty().allMatch(at -> (at - 150) % 500 == 0);
    assertThat(studs(image, 0, true)).isEqualTo(studs(drawn, 1, false));
    assertThat(studs(image, 1, true)).isEqualTo(studs(drawn, 0, false));
  }

  /** Where anchors in studs behind a run are, from its left or its right, to a millimetre. */
  private static List<Long> studs(Layout layout, int run, boolean fromRight) {
    Facet lowest = layout.runs().get(run).get(0).facet();
    double end = 2 * lowest.plane().left() + lowest.width();
    return layout.support().orElseThrow().anchors().stream()
        .filter(anchor -> anchor.into() == Anchor.Into.STUD)
        .filter(anchor -> runOf(layout, anchor) == run)
        .map(anchor -> lowest.plane().floorAxes().fromRoom(anchor.place()).x())
        .map(x -> Math.round(fromRight ? end - x : x))
        .sorted()
        .toList();
  }

  private static int runOf(Layout layout, Anchor anchor) {
    return layout.standing().stream()
        .filter(placed -> placed.member().mark().equals(anchor.member()))
        .findFirst()
        .orElseThrow()
        .run();
  }
}
