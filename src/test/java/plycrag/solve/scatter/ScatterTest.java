package plycrag.solve.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import plycrag.geometry.Shapes;

class ScatterTest {
  private static final double TOLERANCE = 2e-6;

  /** A scatter that is asked for; its area is a sheet with a window, turned and cut. */
  record Case(Geometry area, Spread spread) {
    List<Point> centres() {
      return Scatter.over(area, spread);
    }

    boolean isFree(Point place, List<Point> centres) {
      return area.covers(place)
          && centres.stream().allMatch(one -> one.distance(place) >= required(one, place));
    }

    double required(Point one, Point other) {
      return Math.max(spread.fade().at(one.getY()), spread.fade().at(other.getY())) - TOLERANCE;
    }

    /** Every place of the marking grid around the area. */
    List<Point> grid() {
      double step = spread.step();
      List<Point> places = new ArrayList<>();
      for (int row = -150; row <= 150; row++) {
        for (int column = -150; column <= 150; column++) {
          places.add(Shapes.point(column * step, row * step));
        }
      }
      return places;
    }
  }

  @Provide
  Arbitrary<Case> plain() {
    return Combinators.combine(areas(), fades(), Arbitraries.of(1.0, 1.5875), Arbitraries.longs())
        .as(
            (area, fade, step, seed) ->
                new Case(area, new Spread(fade, step, seed, OptionalDouble.empty())));
  }

  @Provide
  Arbitrary<Case> mirrored() {
    return Combinators.combine(plain(), Arbitraries.of(30.0, 40.5, 41.3, 60.0))
        .as(
            (plain, mirror) ->
                new Case(
                    plain.area(),
                    new Spread(
                        plain.spread().fade(),
                        plain.spread().step(),
                        plain.spread().seed(),
                        OptionalDouble.of(mirror))));
  }

  private static Arbitrary<Fade> fades() {
    return Combinators.combine(Arbitraries.of(4.0, 9.5, 17.0, 30.0), Arbitraries.of(1.0, 1.0, 2.5))
        .as((least, factor) -> new Fade(10, least, 70, least * factor));
  }

  private static Arbitrary<Geometry> areas() {
    return Combinators.combine(
            Arbitraries.integers().between(20, 100),
            Arbitraries.integers().between(20, 100),
            Arbitraries.of(0, 0, 17, 45))
        .as(ScatterTest::area);
  }

  private static Geometry area(int width, int height, int turn) {
    Geometry sheet = Shapes.rectangle(0.5, 0, width, height);
    Geometry window = Shapes.rectangle(width / 3.0, height / 4.0, width / 1.5, height / 2.0);
    Geometry area = Shapes.without(sheet, window);
    Geometry turned =
        AffineTransformation.rotationInstance(Math.toRadians(turn), width / 2.0, 0).transform(area);
    return Shapes.shared(turned, Shapes.rectangle(-100, -100, 100, 100));
  }

  @Property(tries = 200)
  void noTwoAreTooNear(@ForAll("plain") Case one) {
    keepsDistance(one);
  }

  @Property(tries = 200)
  void noTwoAreTooNearBesideAMirror(@ForAll("mirrored") Case one) {
    keepsDistance(one);
  }

  private static void keepsDistance(Case one) {
    List<Point> centres = one.centres();
    for (int at = 0; at < centres.size(); at++) {
      Point centre = centres.get(at);
      assertThat(one.area().covers(centre)).isTrue();
      for (Point other : centres.subList(0, at)) {
        assertThat(centre.distance(other)).isGreaterThanOrEqualTo(one.required(centre, other));
      }
    }
  }

  @Property(tries = 50)
  void noPlaceIsLeftFree(@ForAll("plain") Case one) {
    List<Point> centres = one.centres();
    assertThat(one.grid()).noneMatch(place -> one.isFree(place, centres));
  }

  @Property(tries = 200)
  void allLieOnTheMarkingGrid(@ForAll("plain") Case one) {
    double step = one.spread().step();
    for (Point centre : one.centres()) {
      assertThat(Math.rint(centre.getX() / step) * step).isCloseTo(centre.getX(), within(0.0006));
      assertThat(Math.rint(centre.getY() / step) * step).isCloseTo(centre.getY(), within(0.0006));
    }
  }

  @Property(tries = 200)
  void everyCentreHasItsImage(@ForAll("mirrored") Case one) {
    List<Point> centres = one.centres();
    Set<Coordinate> places = new HashSet<>();
    centres.forEach(centre -> places.add(centre.getCoordinate()));
    assertThat(centres)
        .allMatch(centre -> places.contains(image(centre, one.spread()).getCoordinate()));
  }

  @Property(tries = 50)
  void noPairIsLeftFree(@ForAll("mirrored") Case one) {
    List<Point> centres = one.centres();
    double mirror = one.spread().mirror().orElseThrow();
    assertThat(one.grid())
        .filteredOn(place -> place.getX() <= mirror && one.isFree(place, centres))
        .noneMatch(
            place -> {
              Point image = image(place, one.spread());
              boolean isAlone = image.equals(place);
              return isAlone || one.isFree(image, with(centres, place));
            });
  }

  private static List<Point> with(List<Point> centres, Point place) {
    List<Point> more = new ArrayList<>(centres);
    more.add(place);
    return more;
  }

  private static Point image(Point centre, Spread spread) {
    return Shapes.point(2 * spread.mirror().orElseThrow() - centre.getX(), centre.getY());
  }

  @Property(tries = 50)
  void theSameSeedGivesTheSameCentres(@ForAll("mirrored") Case one) {
    assertThat(one.centres()).isEqualTo(one.centres());
  }

  private static List<Point> sheets(double extent, double distance, long seed) {
    return Scatter.over(
        Shapes.rectangle(0, 0, extent, extent),
        new Spread(new Fade(0, distance, 1, distance), 1, seed, OptionalDouble.empty()));
  }

  @Example
  void anotherSeedGivesOtherCentres() {
    assertThat(sheets(1000, 100, 1)).isNotEqualTo(sheets(1000, 100, 2));
  }

  @Example
  void nothingIsScatteredOverNothing() {
    Geometry nothing = Shapes.together(List.of());
    assertThat(
            new Case(nothing, new Spread(new Fade(0, 1, 1, 1), 1, 1, OptionalDouble.empty()))
                .centres())
        .isEmpty();
  }

  /**
   * Centres thin out up the sheet as the square of the distance: twice as far, a quarter as many.
   */
  @Example
  void aFadeThinsOut() {
    Fade fade = new Fade(1000, 50, 2000, 100);
    List<Point> centres =
        Scatter.over(
            Shapes.rectangle(0, 0, 3000, 3000), new Spread(fade, 1, 7, OptionalDouble.empty()));
    double dense = centres.stream().filter(one -> one.getY() < 1000).count();
    double sparse = centres.stream().filter(one -> one.getY() > 2000).count();
    assertThat(dense / sparse).isCloseTo(4, within(0.4));
  }

  /**
   * The distances of all pairs have the gap and the first peak of Poisson-disc sampling (Bridson
   * 2007, sampled here as published): none below the distance; a peak from one to 1.2 distances,
   * where pairs are much more frequent than of places at random; a dip around 1.6 to 1.8; and no
   * order far off. A maximal pattern has a few more pairs at the peak than one given up after 30
   * tries.
   */
  @Example
  void pairDistancesAreThoseOfPoissonDiscs() {
    double extent = 3000;
    double distance = 60;
    List<Coordinate> ours = sheets(extent, distance, 3).stream().map(Point::getCoordinate).toList();
    List<Coordinate> published = Bridson.samples(extent, distance, 3);
    PairDensity found = new PairDensity(ours, extent, distance);
    PairDensity expected = new PairDensity(published, extent, distance);
    assertThat(found.between(0, 0.999)).isZero();
    assertThat(found.between(1, 1.2)).isGreaterThan(1.3);
    assertThat(found.between(1, 1.2)).isCloseTo(expected.between(1, 1.2), within(0.35));
    assertThat(found.between(1.6, 1.8)).isLessThan(1);
    assertThat(found.between(1.6, 1.8)).isCloseTo(expected.between(1.6, 1.8), within(0.1));
    assertThat(found.between(4, 5)).isCloseTo(1, within(0.03));
  }

  /**
   * A maximal pattern of discs covers 0.547 of an endless plane with discs of half the distance
   * (random sequential adsorption; from memory, Feder 1980); at the edge there is room for half a
   * disc more.
   */
  @Example
  void theDensityIsTheJammingLimit() {
    double extent = 3000;
    double distance = 60;
    double room = (extent + distance) * (extent + distance);
    double covered = sheets(extent, distance, 5).size() * Math.PI * distance * distance / 4;
    assertThat(covered / room).isCloseTo(0.547, within(0.015));
  }
}
