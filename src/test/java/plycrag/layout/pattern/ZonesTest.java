package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Point;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.screws.ScrewPoint;

/** Zones with patterns of their own, told apart by the rectangles and circles of java.awt. */
class ZonesTest {
  private static final double TOLERANCE = 0.002;

  private static final String WALL =
      """
      [[facet]]
      width = 2440
      length = 2440
      angle = 15
      [inserts]
      pattern = "%s"
      """;

  private static final String FEET =
      """
      [[zone]]
      name = "feet"
      left = 600
      low = 200
      width = 1200
      height = 600
      pitch-across = 100
      pitch-up = 100
      """;

  private static List<Point> centres(String toml) {
    return Walls.laidOut(toml).inserts().stream().map(Insert::centre).toList();
  }

  private static List<Point> in(Rectangle2D box, List<Point> places) {
    return places.stream().filter(place -> box.contains(place.getX(), place.getY())).toList();
  }

  /** By hand: 1200 by 600 mm at a pitch of 100 mm, half of it from the edge, are 12 by 6. */
  @Example
  void aZoneHasItsOwnGridAndNoneOfTheFacets() {
    Rectangle2D feet = new Rectangle2D.Double(600, 200, 1200, 600);
    assertThat(in(feet, centres(WALL.formatted("grid") + FEET))).hasSize(72);
    assertThat(in(feet, centres(WALL.formatted("none") + FEET))).hasSize(72);
    assertThat(centres(WALL.formatted("none") + FEET)).hasSize(72);
  }

  @Example
  void aZoneWithoutPatternIsBare() {
    String bare =
        """
        [[zone]]
        centre = [1200, 1200]
        diameter = 900
        pattern = "none"
        """;
    List<Point> all = centres(WALL.formatted("grid"));
    List<Point> left = centres(WALL.formatted("grid") + bare);
    assertThat(left)
        .isNotEmpty()
        .allSatisfy(
            place ->
                assertThat(Point2D.distance(1200, 1200, place.getX(), place.getY()))
                    .isGreaterThanOrEqualTo(450 - 0.05));
    assertThat(left.size()).isLessThan(all.size());
  }

  @Example
  void theLaterOfTwoZonesHasThePlace() {
    String over =
        """
        [[zone]]
        left = 600
        low = 200
        width = 600
        height = 600
        pattern = "lines"
        columns = [310]
        rows = [320]
        """;
    Rectangle2D shared = new Rectangle2D.Double(600, 200, 600, 600);
    assertThat(in(shared, centres(WALL.formatted("none") + FEET + over))).hasSize(1);
  }

  @Property(tries = 25)
  void nothingStandsInTheWayOfAnyInsert(
      @ForAll @IntRange(min = 0, max = 1600) int left,
      @ForAll @IntRange(min = 0, max = 1600) int low,
      @ForAll @IntRange(min = 300, max = 1200) int size,
      @ForAll @IntRange(min = 0, max = 2) int kind) {
    String zone =
        """
        [[zone]]
        left = %d
        low = %d
        width = %d
        height = %d
        pattern = "%s"
        pitch-across = 120
        scatter-spacing = 110
        density = 60
        """
            .formatted(left, low, size, size, List.of("offset", "scatter", "density").get(kind));
    Layout layout = Walls.laidOut(WALL.formatted("grid") + zone);
    assertThat(Inspection.of(layout).findings().stream().filter(Finding::isError)).isEmpty();
    assertThat(apart(layout.inserts())).isGreaterThanOrEqualTo(26 + 10 - TOLERANCE);
  }

  /** The least distance between two, by brute force. */
  private static double apart(List<Insert> inserts) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < inserts.size(); at++) {
      for (Insert other : inserts.subList(at + 1, inserts.size())) {
        least = Math.min(least, inserts.get(at).centre().distance(other.centre()));
      }
    }
    return least;
  }

  @Property(tries = 25)
  void screwPointsKeepOffInsertsScrewsAndEdgesAndMoveNothing(
      @ForAll @IntRange(min = 55, max = 200) int pitch,
      @ForAll @IntRange(min = 0, max = 400) int left) {
    String zone =
        """
        [[zone]]
        name = "smears"
        left = %d
        low = 100
        width = 2000
        height = 1500
        points = "screw-points"
        pitch-across = %d
        pitch-up = %d
        """
            .formatted(left, pitch, pitch);
    FacetLayout bare = Walls.laidOut(WALL.formatted("grid")).facets().get(0);
    FacetLayout facet = Walls.laidOut(WALL.formatted("grid") + zone).facets().get(0);
    assertThat(facet.inserts()).isEqualTo(bare.inserts());
    assertThat(facet.screws()).isEqualTo(bare.screws());
    assertThat(facet.screwPoints()).isNotEmpty();
    for (ScrewPoint point : facet.screwPoints()) {
      List<Double> toInserts = new ArrayList<>();
      facet.inserts().forEach(one -> toInserts.add(one.centre().distance(point.centre())));
      assertThat(toInserts).allMatch(distance -> distance >= 13 + 2.25 + 5);
      assertThat(facet.screws())
          .allMatch(screw -> screw.centre().distance(point.centre()) >= 5 * 4.5);
      assertThat(point.centre().getY()).matches(v -> Math.abs(v - 1220) >= 13.5);
      facet.members().stream()
          .filter(member -> point.member().equals(Optional.of(member.mark())))
          .forEach(
              member -> assertThat(member.box().contains(point.centre().getCoordinate())).isTrue());
    }
  }

  /** By hand: rows that thin from 40 to 10 a square metre have 32.5 of 50 below the middle. */
  @Example
  void aDensityThinsOutUpward() {
    String fading =
        """
        [[facet]]
        width = 4880
        length = 4800
        [inserts]
        pattern = "density"
        density = 40
        top-density = 10
        when-blocked = "report"
        setback = 0
        """;
    List<Point> places = centres(fading);
    double below = places.stream().filter(place -> place.getY() < 2400).count();
    assertThat((double) places.size()).isCloseTo(25 * 4.88 * 4.8, within(30.0));
    assertThat(below / places.size()).isCloseTo(0.65, within(0.03));
  }
}
