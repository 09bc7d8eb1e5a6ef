package plycrag.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.wall.Corner.Part;
import plycrag.wall.Corner.Stretch;

/**
 * Stands facets on each other, every lower edge on the upper edge of the facet before it, and walls
 * beside each other, every facet cut off where it meets one of the wall beside it.
 */
public final class Profile {
  private final List<GivenCutout> cutouts;
  private final List<Run> runs = new ArrayList<>();
  private final Map<String, Integer> byFirst = new HashMap<>();
  private final List<Neighbours> corners = new ArrayList<>();

  /**
   * Two walls beside each other.
   *
   * @param left the number of the one on the left
   * @param right that of the other
   * @param stretches of their corner
   */
  private record Neighbours(int left, int right, List<Stretch> stretches) {}

  private Profile(List<GivenFacet> given, List<GivenCutout> cutouts, double raise) {
    this.cutouts = cutouts;
    int from = 0;
    for (int to = 1; to <= given.size(); to++) {
      if (to == given.size() || given.get(to).beside().isPresent()) {
        add(given.subList(from, to), raise);
        from = to;
      }
    }
  }

  /**
   * The facets of a wall, run by run, each from the floor up.
   *
   * @param given in the file's order
   * @param cutouts openings in them
   * @param raise height of the lowest edges above the floor, mm
   * @throws IllegalArgumentException if one cannot be; see {@link #lost}
   */
  public static List<Facet> of(List<GivenFacet> given, List<GivenCutout> cutouts, double raise) {
    return new Profile(given, cutouts, raise).facets();
  }

  /**
   * The facets of which the walls beside them leave nothing, no edge to stand on, or several parts,
   * by name, each with the reason.
   *
   * @param given in the file's order
   * @param raise height of the lowest edges above the floor, mm
   */
  public static Map<String, Loss> lost(List<GivenFacet> given, double raise) {
    return new Profile(given, List.of(), raise).losses();
  }

  /** What walls beside a facet may leave of it that nobody can make. */
  public enum Loss {
    /** Nothing. */
    WHOLE,
    /** Nothing at its lower edge. */
    FOOT,
    /** Nothing at its upper edge, on which another facet stands. */
    TOP,
    /** Several parts. */
    DIVIDED
  }

  private void add(List<GivenFacet> given, double raise) {
    GivenFacet first = given.get(0);
    int at = runs.size();
    byFirst.put(first.name(), at);
    Optional<Integer> left = first.beside().map(beside -> byFirst.get(beside.facet()));
    double turn = first.beside().map(GivenFacet.Beside::turn).orElse(0.0);
    FloorAxes axes = left.map(one -> runs.get(one).nextStand(turn)).orElse(FloorAxes.FIRST);
    runs.add(Run.of(given, axes, raise, turn));
    left.ifPresent(
        one -> corners.add(new Neighbours(one, at, Corner.between(runs.get(one), runs.get(at)))));
  }

  private List<Facet> facets() {
    List<List<BoundedFacet>> bounded = new ArrayList<>();
    for (int run = 0; run < runs.size(); run++) {
      bounded.add(bounded(run));
    }
    corners.forEach(
        corner ->
            corner
                .stretches()
                .forEach(
                    stretch ->
                        meet(
                            stretch,
                            bounded.get(corner.left()).get(stretch.leftLevel()),
                            bounded.get(corner.right()).get(stretch.rightLevel()))));
    return bounded.stream().flatMap(List::stream).map(facet -> facet.facet(cutouts)).toList();
  }

  private List<BoundedFacet> bounded(int number) {
    Run run = runs.get(number);
    List<BoundedFacet> facets = new ArrayList<>();
    for (int level = 0; level < run.size(); level++) {
      facets.add(new BoundedFacet(run, level, Shapes.largest(area(number, level))));
    }
    for (int level = 1; level < run.size(); level++) {
      facets.get(level).standOn(facets.get(level - 1));
    }
    return facets;
  }

  private static void meet(Stretch stretch, BoundedFacet left, BoundedFacet right) {
    left.meet(right, stretch.onLeft(), stretch.onRight(), stretch.turn());
  }

  /** What is left of a facet between the walls beside it. */
  private Geometry area(int number, int level) {
    Geometry area = runs.get(number).wished(level);
    for (FacetSide side : sides(number, level)) {
      area = side.bounded(area);
    }
    return area;
  }

  private List<FacetSide> sides(int number, int level) {
    List<FacetSide> sides = new ArrayList<>();
    for (Neighbours corner : corners) {
      if (corner.right() == number) {
        sides.add(side(corner, number, level, false));
      }
      if (corner.left() == number) {
        sides.add(side(corner, number, level, true));
      }
    }
    return sides;
  }

  private FacetSide side(Neighbours corner, int number, int level, boolean isRight) {
    Function<Stretch, Part> part = isRight ? Stretch::onLeft : Stretch::onRight;
    Function<Stretch, Integer> at = isRight ? Stretch::leftLevel : Stretch::rightLevel;
    Run run = runs.get(number);
    List<Part> parts =
        corner.stretches().stream()
            .filter(stretch -> at.apply(stretch) == level)
            .map(part)
            .toList();
    boolean isTurned = runs.get(corner.right()).turn() != 0;
    Optional<Stretch> last =
        corner.stretches().stream()
            .reduce((one, next) -> next)
            .filter(end -> isTurned && at.apply(end) <= level);
    return new FacetSide(
        isRight, parts, last.map(end -> run.goesOn(part.apply(end), at.apply(end), level)));
  }

  private Map<String, Loss> losses() {
    Map<String, Loss> losses = new HashMap<>();
    for (int number = 0; number < runs.size(); number++) {
      Run run = runs.get(number);
      for (int level = 0; level < run.size(); level++) {
        Optional<Loss> loss = loss(area(number, level), run, level);
        if (loss.isPresent()) {
          losses.put(run.given().get(level).name(), loss.get());
          break; // what stands on it has nothing to stand on
        }
      }
    }
    return losses;
  }

  private static Optional<Loss> loss(Geometry area, Run run, int level) {
    List<Polygon> parts = Shapes.areas(area);
    if (parts.isEmpty()) {
      return Optional.of(Loss.WHOLE);
    }
    if (parts.size() > 1) {
      return Optional.of(Loss.DIVIDED);
    }
    if (!BoundedFacet.hasLevelEdge(parts.get(0), 0)) {
      return Optional.of(Loss.FOOT);
    }
    boolean carries = level + 1 < run.size();
    return carries && !BoundedFacet.hasLevelEdge(parts.get(0), run.given().get(level).length())
        ? Optional.of(Loss.TOP)
        : Optional.empty();
  }
}
