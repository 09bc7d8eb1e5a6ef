package plycrag.layout.standing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.wall.Wall;
import plycrag.wall.room.RoomPlane;

/** What it takes to tilt a frame up from the floor. */
public final class Raising {
  private Raising() {}

  /**
   * How high a frame reaches on its way up: the greatest distance, in section, from the edge that
   * it is tilted up on to any of its corners; from the better of the two lowest edges, mm.
   *
   * @param facets of a run that are tilted up together, from the floor up
   */
  public static double diagonal(Wall wall, List<FacetLayout> facets) {
    return pivots(wall, facets.get(0))
        .mapToDouble(
            pivot -> reaches(wall, facets, pivot).mapToDouble(Reach::length).max().orElse(0))
        .min()
        .orElse(0);
  }

  /** The two edges that a frame may be tilted up on. */
  private static Stream<Vector3> pivots(Wall wall, FacetLayout lowest) {
    double thickness = wall.sheet().thickness();
    double low =
        lowest.members().stream().mapToDouble(member -> member.shadow().getMinY()).min().orElse(0);
    return Stream.of(thickness, thickness + wall.frame().depth())
        .map(behind -> lowest.facet().plane().toRoom(new Vector3(0, low, behind)));
  }

  /**
   * What tilting a frame up asks for where the ceiling is nearest to what it needs.
   *
   * @param needed how high the ceiling has to be above the run's foot, mm: where it falls toward
   *     the climber, a corner is nearest to it where its circle is as steep
   * @param ceiling how high it is there, mm
   */
  public record Need(double needed, double ceiling) {
    /** By how much the ceiling is too low, mm; below zero it is not. */
    public double shortfall() {
      return needed - ceiling;
    }
  }

  /** What that is for facets that are joined on the floor; empty if no ceiling is told. */
  public static Optional<Need> need(Layout layout, List<FacetLayout> facets) {
    Comparator<Need> byShortfall = Comparator.comparingDouble(Need::shortfall);
    return ceiling(layout)
        .flatMap(
            ceiling ->
                pivots(layout.wall(), facets.get(0))
                    .flatMap(
                        pivot ->
                            reaches(layout.wall(), facets, pivot)
                                .map(reach -> need(ceiling, axes(facets), reach))
                                .max(byShortfall)
                                .stream())
                    .min(byShortfall));
  }

  private static Need need(RoomPlane ceiling, FloorAxes axes, Reach reach) {
    return new Need(
        reach.length() * steepness(ceiling, axes), above(ceiling, axes, reach.across()));
  }

  private static Optional<RoomPlane> ceiling(Layout layout) {
    return layout.wall().room().ceiling().plane();
  }

  /** How high a ceiling is above a place of a run's foot, x of the run, mm. */
  private static double above(RoomPlane ceiling, FloorAxes axes, double across) {
    Vector3 foot = axes.toRoom(new Vector3(across, 0, 0));
    return ceiling.at(foot.x(), foot.y());
  }

  /** One over the cosine of the angle at which a ceiling falls toward the climber of a run. */
  private static double steepness(RoomPlane ceiling, FloorAxes axes) {
    Vector3 foot = axes.toRoom(new Vector3(0, 0, 0));
    double fall = Math.min(0, ceiling.rise(foot, axes.toRoom(new Vector3(0, 1, 0))));
    return Math.sqrt(1 + fall * fall);
  }

  /** Whether facets that are joined on the floor can be tilted up; true if no ceiling is told. */
  public static boolean passes(Layout layout, List<FacetLayout> facets) {
    return need(layout, facets).map(need -> Tolerance.TOUCH >= need.shortfall()).orElse(true);
  }

  /**
   * How long a frame of one facet is at most, up the slope, that can be tilted up under the ceiling
   * that is told, wherever it stands along a run, mm.
   */
  public static double longest(Layout layout, List<FacetLayout> run) {
    FloorAxes axes = axes(run);
    double most =
        ceiling(layout).stream()
            .flatMapToDouble(
                ceiling ->
                    run.stream()
                        .map(FacetLayout::facet)
                        .flatMap(
                            facet ->
                                Stream.of(
                                    facet.plane().left(), facet.plane().left() + facet.width()))
                        .mapToDouble(
                            across -> above(ceiling, axes, across) / steepness(ceiling, axes)))
            .min()
            .orElse(0);
    double depth = layout.wall().frame().depth();
    return Math.sqrt(Math.max(0, most * most - depth * depth));
  }

  /**
   * A corner of a frame that is tilted up.
   *
   * @param across where it is, x of the run, mm
   * @param length from the edge that it turns about, in section, mm
   */
  private record Reach(double across, double length) {}

  private static FloorAxes axes(List<FacetLayout> facets) {
    return facets.get(0).facet().plane().floorAxes();
  }

  private static Stream<Reach> reaches(Wall wall, List<FacetLayout> facets, Vector3 pivot) {
    FloorAxes axes = axes(facets);
    Vector3 from = axes.fromRoom(pivot);
    return facets.stream()
        .flatMap(facet -> corners(wall, facet))
        .map(axes::fromRoom)
        .map(
            corner -> {
              Vector3 way = corner.minus(from);
              return new Reach(corner.x(), new Vector3(0, way.y(), way.z()).length());
            });
  }

  private static Stream<Vector3> corners(Wall wall, FacetLayout facet) {
    return facet.members().stream()
        .map(member -> member.body(wall.sheet().thickness()).mapped(facet.facet().plane()::toRoom))
        .flatMap(solid -> Stream.concat(solid.near().stream(), solid.far().stream()));
  }
}
