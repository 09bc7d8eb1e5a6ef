package plycrag.layout.skin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.geometry.FacetPlane;
import plycrag.layout.Layout;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/** Two walls that meet in a corner, against closed forms and against places in the room. */
class CornerTest {
  private static final String PAIR =
      """
      [[facet]]
      name = "port"
      angle = %s
      length = 2000
      width = 2400
      [[facet]]
      name = "starboard"
      beside = "port"
      turn = %s
      angle = %s
      length = 2000
      width = 2400
      [inserts]
      when-blocked = "drop"
      """;

  private static Layout pair(int left, int turn, int right) {
    return Walls.laidOut(PAIR.formatted(left, turn, right));
  }

  /**
   * The Building Trades Pocketbook, "Hopper Bevels", fig. 25: with a side of breadth w and
   * thickness t that leans by L and stands on c, its upper corner b lies w sin L out; projected to
   * w above c, the line from c is the face bevel, whose tangent from square is sin L. The outer
   * corner a, t further on square to the side, projected to t above that, gives the mitre bevel
   * along the edge, t cos L to t; a saw set square to the face bevel's line tilts by less, times
   * its cosine.
   */
  @ParameterizedTest
  @ValueSource(ints = {5, 15, 30})
  void equalLeansGiveTheHandbooksHopper(int lean) {
    double w = 300;
    double t = 18;
    double out = w * Math.sin(Math.toRadians(lean));
    double face = Math.atan2(out, w);
    double edge = Math.atan2(t * Math.cos(Math.toRadians(lean)), t);
    Facet port = pair(lean, 90, lean).facets().get(0).facet();
    assertThat(mitre(port)).isCloseTo(Math.toDegrees(face), within(0.001));
    assertThat(port.fold(Fold.Place.RIGHT).orElseThrow().bevel())
        .isCloseTo(Math.toDegrees(Math.atan(Math.tan(edge) * Math.cos(face))), within(0.001));
  }

  private static double mitre(Facet port) {
    double top =
        List.of(port.boundary().getCoordinates()).stream()
            .filter(corner -> corner.y > 1999)
            .mapToDouble(corner -> corner.x)
            .max()
            .orElseThrow();
    return Math.toDegrees(Math.atan((2400 - top) / 2000));
  }

  /**
   * For corners of any angle the mitre's tangent is the sine of the lean times the tangent of half
   * the corner, the bevel's sine the cosine of the lean times the sine of half the corner (from
   * memory). For 15° and 90°: 14.51° and 43.08°.
   */
  @Test
  void equalLeansGiveTheCompoundMitre() {
    Facet port = pair(15, 90, 15).facets().get(0).facet();
    assertThat(port.width()).isCloseTo(2400, within(0.001));
    double mitre = mitre(port);
    assertThat(mitre).isCloseTo(14.511, within(0.001));
    double bevel = port.fold(Fold.Place.RIGHT).orElseThrow().bevel();
    assertThat(bevel).isCloseTo(43.0795, within(0.001));
    double sine = Math.cos(Math.toRadians(15)) * Math.sin(Math.toRadians(45));
    assertThat(Math.sin(Math.toRadians(bevel))).isCloseTo(sine, within(1e-9));
  }

  /** Plumb walls have square ends, and a bevel of half the corner. */
  @Test
  void plumbWallsMeetInAnUprightLine() {
    Facet port = pair(0, 60, 0).facets().get(0).facet();
    assertThat(port.isRectangle()).isTrue();
    assertThat(port.fold(Fold.Place.RIGHT).orElseThrow().bevel()).isCloseTo(30, within(1e-9));
  }

  /** A place in the room by rotations that this test makes itself. */
  private static double[] inRoom(Facet facet, double heading, double x0, Coordinate at, double w) {
    FacetPlane plane = facet.plane();
    double a = Math.toRadians(facet.angle());
    double x = plane.left() + at.x;
    double y = at.y * Math.sin(a) - w * Math.cos(a);
    double z = at.y * Math.cos(a) + w * Math.sin(a);
    double t = Math.toRadians(heading);
    return new double[] {
      x0 + x * Math.cos(t) - y * Math.sin(t), x * Math.sin(t) + y * Math.cos(t), z
    };
  }

  /** The edges of the sheets' faces, front and back, of both walls lie on one line in the room. */
  @Property(tries = 40)
  void bothWallsShareTheCorner(
      @ForAll @IntRange(min = -10, max = 35) int left,
      @ForAll @IntRange(min = -10, max = 35) int right,
      @ForAll @IntRange(min = 20, max = 80) int turn,
      @ForAll boolean inside) {
    int signed = inside ? turn : -turn;
    Layout layout = pair(left, signed, right);
    Facet port = layout.facets().get(0).facet();
    Facet starboard = layout.facets().get(1).facet();
    for (double w : new double[] {0, 18}) {
      double[][] one = edge(layout, 0, Fold.Place.RIGHT, w);
      double[][] other = edge(layout, 1, Fold.Place.LEFT, w);
      double[] from = inRoom(port, 0, 0, new Coordinate(one[0][0], one[0][1]), w);
      double[] to = inRoom(port, 0, 0, new Coordinate(one[1][0], one[1][1]), w);
      for (double[] end : other) {
        double[] place = inRoom(starboard, signed, 2400, new Coordinate(end[0], end[1]), w);
        assertThat(offLine(from, to, place)).isLessThan(0.02);
      }
    }
  }

  /** The fold's side of all front faces together, or of all back faces. */
  private static double[][] edge(Layout layout, int at, Fold.Place place, double w) {
    Facet facet = layout.facets().get(at).facet();
    FoldCuts cuts = FoldCuts.of(facet, layout.wall());
    Polygon faces = w == 0 ? cuts.front() : cuts.back();
    int side = facet.fold(place).orElseThrow().side();
    Coordinate[] ring = faces.getExteriorRing().getCoordinates();
    return new double[][] {{ring[side].x, ring[side].y}, {ring[side + 1].x, ring[side + 1].y}};
  }

  private static double offLine(double[] from, double[] to, double[] place) {
    double[] d = {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
    double[] p = {place[0] - from[0], place[1] - from[1], place[2] - from[2]};
    double cx = d[1] * p[2] - d[2] * p[1];
    double cy = d[2] * p[0] - d[0] * p[2];
    double cz = d[0] * p[1] - d[1] * p[0];
    return Math.sqrt(cx * cx + cy * cy + cz * cz)
        / Math.sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
  }

  @Property(tries = 25)
  void nothingOverlapsAndEveryEdgeIsBacked(
      @ForAll @IntRange(min = 0, max = 30) int left,
      @ForAll @IntRange(min = 0, max = 30) int right,
      @ForAll @IntRange(min = 30, max = 90) int turn) {
    Layout layout = pair(left, turn, right);
    Found.by("members-overlap", layout).isNothing();
    Found.by("seam-backing", layout).isNothing();
  }
}
