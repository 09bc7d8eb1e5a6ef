package plycrag.layout.standing;

import java.util.List;
import java.util.stream.Stream;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.wall.Wall;

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
    FacetLayout lowest = facets.get(0);
    double thickness = wall.sheet().thickness();
    double low =
        lowest.members().stream().mapToDouble(member -> member.shadow().getMinY()).min().orElse(0);
    return Stream.of(thickness, thickness + wall.frame().depth())
        .map(behind -> lowest.facet().plane().toRoom(new Vector3(0, low, behind)))
        .mapToDouble(pivot -> farthest(wall, facets, pivot))
        .min()
        .orElse(0);
  }

  /**
   * How high a ceiling has to be above the wall's foot for that, mm. Where it falls toward the
   * climber, the farthest corner is nearest to it where its circle is as steep.
   */
  public static double needed(Layout layout, List<FacetLayout> facets) {
    double fall = Math.min(0, layout.wall().room().ceiling().pitch());
    return diagonal(layout.wall(), facets) / Trig.cos(fall);
  }

  /** Whether facets that are joined on the floor can be tilted up; true if no ceiling is told. */
  public static boolean passes(Layout layout, List<FacetLayout> facets) {
    return layout
        .wall()
        .room()
        .ceiling()
        .height()
        .map(ceiling -> needed(layout, facets) <= ceiling + Tolerance.TOUCH)
        .orElse(true);
  }

  /**
   * How long a frame of one facet is at most, up the slope, that can be tilted up under the ceiling
   * that is told, mm.
   */
  public static double longest(Layout layout) {
    double fall = Math.min(0, layout.wall().room().ceiling().pitch());
    double most = layout.wall().room().ceiling().height().orElse(0.0) * Trig.cos(fall);
    double depth = layout.wall().frame().depth();
    return Math.sqrt(Math.max(0, most * most - depth * depth));
  }

  private static double farthest(Wall wall, List<FacetLayout> facets, Vector3 pivot) {
    Vector3 from = facets.get(0).facet().plane().floorAxes().fromRoom(pivot);
    return facets.stream()
        .flatMap(facet -> corners(wall, facet))
        .map(corner -> facets.get(0).facet().plane().floorAxes().fromRoom(corner).minus(from))
        .mapToDouble(way -> new Vector3(0, way.y(), way.z()).length())
        .max()
        .orElse(0);
  }

  private static Stream<Vector3> corners(Wall wall, FacetLayout facet) {
    return facet.members().stream()
        .map(member -> member.body(wall.sheet().thickness()).mapped(facet.facet().plane()::toRoom))
        .flatMap(solid -> Stream.concat(solid.near().stream(), solid.far().stream()));
  }
}
