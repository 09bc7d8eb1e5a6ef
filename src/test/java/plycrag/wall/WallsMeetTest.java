package plycrag.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import plycrag.wall.Fold.Place;

/** Walls that fold at different heights, against closed forms and against the room. */
class WallsMeetTest {
  private static final double WIDTH = 4000;

  private static GivenFacet facet(String name, double angle, double length, Optional<Double> turn) {
    return new GivenFacet(
        name,
        angle,
        new ToldLength(ToldLength.Key.LENGTH, length),
        WIDTH,
        Optional.empty(),
        0,
        turn.map(degrees -> new GivenFacet.Beside("port", degrees)));
  }

  private static List<Facet> walls(GivenFacet... given) {
    return Profile.of(List.of(given), List.of(), 0);
  }

  /**
   * A plumb wall beside a kick and an overhang at a right angle: at a height of z above the kick of
   * 300 mm the overhang stands (z - 300) · tan 35° out, and so much of the plumb wall is behind it.
   */
  @Test
  void aPlumbWallIsCutOffAlongTheKink() {
    Facet port =
        walls(
                facet("port", 0, 2200, Optional.empty()),
                facet("kick", 0, 300, Optional.of(90.0)),
                facet("steep", 35, 2400, Optional.empty()))
            .get(0);
    double top = WIDTH - (2200 - 300) * Math.tan(Math.toRadians(35));
    assertThat(List.of(port.boundary().getExteriorRing().getCoordinates()))
        .usingElementComparator(
            (one, other) -> one.distance(other) < 0.002 ? 0 : Double.compare(one.x, other.x) | 1)
        .containsExactly(
            new Coordinate(0, 0),
            new Coordinate(WIDTH, 0),
            new Coordinate(WIDTH, 300),
            new Coordinate(top, 2200),
            new Coordinate(0, 2200),
            new Coordinate(0, 0));
    assertThat(port.folds(Place.RIGHT)).extracting(Fold::other).containsExactly("kick", "steep");
    assertThat(port.folds(Place.RIGHT))
        .allSatisfy(fold -> assertThat(fold.turn()).isCloseTo(90, within(1e-9)));
  }

  /** A wall that ends lower leaves the other to go straight up, if it goes on far. */
  @Test
  void aboveALowerWallTheSideGoesStraightUp() {
    Facet port =
        walls(facet("port", 0, 2400, Optional.empty()), facet("low", 30, 1000, Optional.of(90.0)))
            .get(0);
    double out = 1000 * Math.sin(Math.toRadians(30));
    assertThat(port.boundary().getCoordinates())
        .anyMatch(at -> at.distance(new Coordinate(WIDTH - out, 2400)) < 0.002)
        .anyMatch(at -> at.distance(new Coordinate(WIDTH - out, 866.025)) < 0.002);
  }

  /** Walls side by side meet where they lie in one plane, and only there. */
  @Test
  void wallsSideBySideMeetInOnePlane() {
    List<Facet> walls =
        walls(
            facet("port", 0, 1000, Optional.empty()),
            facet("port top", 20, 1000, Optional.empty()),
            facet("starboard", 0, 1500, Optional.of(0.0)));
    assertThat(walls.get(0).folds(Place.RIGHT))
        .singleElement()
        .satisfies(fold -> assertThat(fold.length()).isCloseTo(1000, within(1e-6)));
    assertThat(walls.get(1).folds(Place.RIGHT)).isEmpty();
    assertThat(walls).allSatisfy(wall -> assertThat(wall.isRectangle()).isTrue());
  }

  /** Both see each fold, as long and as sharp, and its ends lie on both climbing faces. */
  @Property(tries = 200)
  void whereTheyMeetLiesOnBoth(
      @ForAll @IntRange(min = 200, max = 700) int kick,
      @ForAll @IntRange(min = 200, max = 700) int otherKick,
      @ForAll @IntRange(min = -10, max = 45) int lean,
      @ForAll @IntRange(min = -10, max = 45) int otherLean,
      @ForAll @IntRange(min = 30, max = 90) int turn,
      @ForAll boolean inside) {
    double turned = inside ? turn : -turn;
    List<Facet> walls =
        walls(
            facet("port", 0, kick, Optional.empty()),
            facet("port top", lean, 1500, Optional.empty()),
            facet("starboard", 0, otherKick, Optional.of(turned)),
            facet("starboard top", otherLean, 1200, Optional.empty()));
    for (Facet port : walls.subList(0, 2)) {
      for (Fold fold : port.folds(Place.RIGHT)) {
        Facet starboard =
            walls.stream().filter(one -> one.name().equals(fold.other())).findFirst().orElseThrow();
        Fold back =
            starboard.folds(Place.LEFT).stream()
                .filter(one -> fold.isSameAs(one, port.name(), starboard.name()))
                .findFirst()
                .orElseThrow();
        assertThat(back.turn()).isEqualTo(fold.turn());
        double cosine = cosine(port.angle(), starboard.angle(), turned);
        assertThat(Math.cos(Math.toRadians(fold.turn()))).isCloseTo(cosine, within(1e-9));
        Coordinate[] ring = port.boundary().getExteriorRing().getCoordinates();
        double length = ring[fold.side()].distance(ring[fold.side() + 1]);
        assertThat(fold.length()).isLessThanOrEqualTo(length + 0.01);
        double kickUnder = starboard.name().equals("starboard") ? 0 : otherKick;
        for (Coordinate end : List.of(ring[fold.side()], ring[fold.side() + 1])) {
          double[] room = inRoom(port, kick, end);
          assertThat(off(starboard, kickUnder, turned, room)).isCloseTo(0, within(0.01));
        }
      }
    }
  }

  /**
   * The angle between two faces that lean by a and b and are turned by t: their normals, (0, cos a,
   * -sin a) and (-sin t cos b, cos t cos b, -sin b), multiplied.
   */
  private static double cosine(double a, double b, double t) {
    return Math.cos(Math.toRadians(a)) * Math.cos(Math.toRadians(b)) * Math.cos(Math.toRadians(t))
        + Math.sin(Math.toRadians(a)) * Math.sin(Math.toRadians(b));
  }

  /** A place of a facet of the first wall, by rotations that this test makes itself. */
  private static double[] inRoom(Facet facet, double kick, Coordinate at) {
    boolean isTop = facet.name().endsWith("top");
    double lean = Math.toRadians(facet.angle());
    return new double[] {
      facet.plane().left() + at.x, at.y * Math.sin(lean), (isTop ? kick : 0) + at.y * Math.cos(lean)
    };
  }

  /** How far a place lies off the face of a facet of the wall that begins at (4000, 0). */
  private static double off(Facet facet, double foot, double turn, double... room) {
    double t = Math.toRadians(turn);
    double y = -(room[0] - WIDTH) * Math.sin(t) + room[1] * Math.cos(t);
    double lean = Math.toRadians(facet.angle());
    return y * Math.cos(lean) - (room[2] - foot) * Math.sin(lean);
  }
}
