package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.wall.room.RoomPlane;

/**
 * The floor under a wall that is set level: it touches what stands on it at its highest place, and
 * everything else that stands is packed up from it.
 *
 * @param floor as high as the level where it is highest under the wall
 * @param packed what stands on it, run by run
 */
public record Ground(RoomPlane floor, List<Packed> packed) {
  private static final RoomPlane LEVEL = new RoomPlane(0, 0, 0);

  /** Copies what is packed. */
  public Ground {
    packed = List.copyOf(packed);
  }

  /**
   * How far the floor lies below a member, mm.
   *
   * @param mark of the member
   * @param run its number, from 0
   * @param begin at its left end, or at its rear one where it runs out from the wall
   * @param end at its other end
   */
  public record Packed(String mark, int run, double begin, double end) {}

  private record Standing(String mark, int run, List<Vector3> foot) {}

  /** The floor under a layout. */
  public static Ground of(Layout layout) {
    List<Standing> standing = new ArrayList<>();
    for (int run = 0; run < layout.runs().size(); run++) {
      standing.addAll(standing(layout, run));
    }
    RoomPlane told = layout.wall().floor();
    double highest =
        standing.stream()
            .flatMap(one -> one.foot().stream())
            .mapToDouble(place -> told.at(place.x(), place.y()))
            .max()
            .orElse(0);
    RoomPlane floor = told.raised(-highest);
    return new Ground(floor, standing.stream().map(one -> packed(one, floor)).toList());
  }

  /** The floor alone, as high as the level that the wall is set on where it is highest under it. */
  public static RoomPlane floor(Layout layout) {
    return layout.wall().floor().isLevel() ? LEVEL : of(layout).floor();
  }

  private static List<Standing> standing(Layout layout, int run) {
    List<Standing> all = new ArrayList<>();
    double thickness = layout.wall().sheet().thickness();
    for (FacetLayout facet : layout.runs().get(run)) {
      for (Member member : facet.members()) {
        Solid body = member.body(thickness).mapped(facet.facet().plane()::toRoom);
        all.add(standing(layout, run, member.mark(), body));
      }
    }
    layout.standing().stream()
        .filter(placed -> placed.run() == run)
        .forEach(placed -> all.add(standing(layout, run, placed.member().mark(), placed.body())));
    double low = all.stream().mapToDouble(one -> one.foot().get(0).z()).min().orElse(0);
    double step = layout.wall().tape().unit().markingGrid();
    return all.stream().filter(one -> Tolerance.atMost(one.foot().get(0).z(), low + step)).toList();
  }

  private static Standing standing(Layout layout, int run, String mark, Solid body) {
    List<Vector3> corners = Stream.concat(body.near().stream(), body.far().stream()).toList();
    double low = corners.stream().mapToDouble(Vector3::z).min().orElse(0);
    List<Vector3> inRun =
        corners.stream()
            .map(layout.runs().get(run).get(0).facet().plane().floorAxes()::fromRoom)
            .toList();
    boolean runsOut = extent(inRun, Vector3::y) > extent(inRun, Vector3::x);
    ToDoubleFunction<Vector3> along = runsOut ? Vector3::y : Vector3::x;
    List<Vector3> foot =
        IntStream.range(0, corners.size())
            .filter(at -> corners.get(at).z() <= low + Tolerance.TOUCH)
            .boxed()
            .sorted(
                (one, other) ->
                    Double.compare(
                        along.applyAsDouble(inRun.get(one)), along.applyAsDouble(inRun.get(other))))
            .map(corners::get)
            .toList();
    return new Standing(mark, run, foot);
  }

  private static double extent(List<Vector3> places, ToDoubleFunction<Vector3> axis) {
    return places.stream().mapToDouble(axis).max().orElse(0)
        - places.stream().mapToDouble(axis).min().orElse(0);
  }

  private static Packed packed(Standing one, RoomPlane floor) {
    List<Vector3> foot = one.foot();
    int half = Math.max(1, foot.size() / 2);
    return new Packed(
        one.mark(),
        one.run(),
        middle(foot.subList(0, half), floor),
        middle(foot.subList(foot.size() - half, foot.size()), floor));
  }

  private static double middle(List<Vector3> end, RoomPlane floor) {
    return end.stream().mapToDouble(floor::heightOver).average().orElse(0);
  }
}
