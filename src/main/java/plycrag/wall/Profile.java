package plycrag.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Sides.Side;

/**
 * Stands facets on each other, every lower edge on the upper edge of the facet before it, and walls
 * beside each other, every facet cut off where the one beside it begins.
 */
public final class Profile {
  private final List<GivenCutout> cutouts;
  private final List<Run> runs = new ArrayList<>();
  private final Map<String, Integer> byFirst = new HashMap<>();
  private final Map<Integer, Integer> leftOf = new HashMap<>();

  private Profile(List<GivenCutout> cutouts) {
    this.cutouts = cutouts;
  }

  /**
   * The facets of a wall, run by run, each from the floor up.
   *
   * @param given in the file's order
   * @param cutouts openings in them
   * @param raise height of the lowest edges above the floor, mm
   */
  public static List<Facet> of(List<GivenFacet> given, List<GivenCutout> cutouts, double raise) {
    Profile profile = new Profile(cutouts);
    int from = 0;
    for (int to = 1; to <= given.size(); to++) {
      if (to == given.size() || given.get(to).beside().isPresent()) {
        profile.add(given.subList(from, to), raise);
        from = to;
      }
    }
    List<Facet> facets = new ArrayList<>();
    for (int run = 0; run < profile.runs.size(); run++) {
      profile.addFacets(run, facets);
    }
    return facets;
  }

  private void add(List<GivenFacet> given, double raise) {
    GivenFacet first = given.get(0);
    int at = runs.size();
    byFirst.put(first.name(), at);
    first.beside().ifPresent(beside -> leftOf.put(at, byFirst.get(beside.facet())));
    double turn = first.beside().map(GivenFacet.Beside::turn).orElse(0.0);
    FloorAxes axes =
        first
            .beside()
            .map(beside -> runs.get(byFirst.get(beside.facet())).nextStand(turn))
            .orElse(FloorAxes.FIRST);
    runs.add(Run.of(given, axes, raise, turn));
  }

  private void addFacets(int number, List<Facet> facets) {
    Run run = runs.get(number);
    Sides below = new Sides(Optional.empty(), Optional.empty());
    for (int level = 0; level < run.size(); level++) {
      Sides sides = sides(number, level, below);
      facets.add(facet(run, level, sides));
      below = sides;
    }
  }

  /** Where the facets beside one cut it off. */
  private Sides sides(int number, int level, Sides below) {
    Run run = runs.get(number);
    double shift = level == 0 ? 0 : run.given().get(level).shift();
    double length = level == 0 ? 0 : run.given().get(level - 1).length();
    double width = run.given().get(level).width();
    Optional<Run> onLeft = Optional.ofNullable(leftOf.get(number)).map(runs::get);
    Optional<Run> onRight = rightOf(number).stream().mapToObj(runs::get).findFirst();
    double lowFoot = level == 0 ? 0 : below.left().map(side -> side.at(length)).orElse(0.0) - shift;
    double highFoot =
        level == 0 ? width : below.right().map(side -> side.at(length) - shift).orElse(width);
    return new Sides(
        onLeft
            .filter(other -> meets(other, run, level))
            .map(other -> corner(other, run, level, run.turn()))
            .map(
                corner ->
                    new Side(
                        lowFoot,
                        corner.slopeOnRight(),
                        corner.angle(),
                        onLeft.get().given().get(level).name())),
        onRight
            .filter(other -> meets(run, other, level))
            .map(other -> corner(run, other, level, other.turn()))
            .map(
                corner ->
                    new Side(
                        highFoot,
                        corner.slopeOnLeft(),
                        corner.angle(),
                        onRight.get().given().get(level).name())));
  }

  private OptionalInt rightOf(int number) {
    return leftOf.entrySet().stream()
        .filter(entry -> entry.getValue() == number)
        .mapToInt(Map.Entry::getKey)
        .findFirst();
  }

  /** Whether the facets of two runs stand at the same height, and all below them. */
  private static boolean meets(Run left, Run right, int level) {
    for (int at = 0; at <= level; at++) {
      boolean both = at < left.size() && at < right.size();
      if (!both
          || Math.abs(left.planes().get(at).raise() - right.planes().get(at).raise())
              > Tolerance.TOUCH) {
        return false;
      }
    }
    return true;
  }

  private static Corner corner(Run left, Run right, int level, double turn) {
    return new Corner(left.planes().get(level), right.planes().get(level), turn);
  }

  private Facet facet(Run run, int level, Sides sides) {
    GivenFacet given = run.given().get(level);
    Optional<Polygon> wished =
        given.outline().map(corners -> Shapes.polygon(FacetShapes.coordinates(corners)));
    Polygon bounded = sides.bounded(wished, given.width(), given.length());
    double left = bounded.getEnvelopeInternal().getMinX();
    Polygon boundary = moved(bounded, -left);
    FacetPlane plane = run.planes().get(level);
    return new Facet(
        given.name(),
        given.angle(),
        boundary,
        cutouts(given.name()),
        folds(run, level, sides, boundary, left),
        new FacetPlane(
            plane.angle(), plane.left() + left, plane.out(), plane.raise(), plane.floorAxes()));
  }

  private static Polygon moved(Polygon area, double across) {
    List<Coordinate> corners = new ArrayList<>();
    for (Coordinate corner : area.getExteriorRing().getCoordinates()) {
      corners.add(new Coordinate(corner.x + across, corner.y));
    }
    return across == 0 ? area : Shapes.polygon(corners.subList(0, corners.size() - 1));
  }

  private static List<Fold> folds(Run run, int level, Sides sides, Polygon boundary, double left) {
    double length = run.given().get(level).length();
    List<Fold> folds = new ArrayList<>();
    if (level > 0) {
      Side lower = new Side(0, 0, turn(run, level), run.given().get(level - 1).name());
      addFold(boundary, corner -> Math.abs(corner.y), lower, Fold.Place.BELOW, folds);
    }
    if (level + 1 < run.size()) {
      Side upper = new Side(0, 0, turn(run, level + 1), run.given().get(level + 1).name());
      addFold(boundary, corner -> Math.abs(corner.y - length), upper, Fold.Place.ABOVE, folds);
    }
    sides
        .left()
        .ifPresent(side -> addFold(boundary, off(side, left), side, Fold.Place.LEFT, folds));
    sides
        .right()
        .ifPresent(side -> addFold(boundary, off(side, left), side, Fold.Place.RIGHT, folds));
    return folds;
  }

  private interface Off {
    /** How far a corner of the boundary lies off a line, mm. */
    double line(Coordinate corner);
  }

  private static Off off(Side side, double left) {
    return corner -> Math.abs(corner.x + left - side.at(corner.y));
  }

  private static void addFold(
      Polygon boundary, Off off, Side side, Fold.Place place, List<Fold> folds) {
    List<LineString> edges = Shapes.outerEdges(boundary);
    for (int at = 0; at < edges.size(); at++) {
      if (off.line(edges.get(at).getCoordinateN(0)) < Tolerance.TOUCH
          && off.line(edges.get(at).getCoordinateN(1)) < Tolerance.TOUCH) {
        folds.add(new Fold(at, side.turn(), side.other(), place));
        return;
      }
    }
  }

  private static double turn(Run run, int upper) {
    return run.given().get(upper).angle() - run.given().get(upper - 1).angle();
  }

  private List<Cutout> cutouts(String facet) {
    return cutouts.stream()
        .filter(cutout -> cutout.facet().equals(facet))
        .map(
            cutout ->
                new Cutout(cutout.name(), FacetShapes.polygon(cutout.shape()), cutout.filled()))
        .toList();
  }
}
