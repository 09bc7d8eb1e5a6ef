package plycrag.layout.standing;

import java.util.List;
import java.util.stream.Stream;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.Swing;
import plycrag.wall.Wall;
import plycrag.wall.room.RoomPlane;

/**
 * Where whoever falls off a run may land, in the axes of the run.
 *
 * <p>EN 12572-2:2017 Table 2, as DGUV Information 202-018 chapter 2 gives it: 2.0 m in front of the
 * outermost edge's projection on the ground for walls up to 3.0 m high, 2.5 m above.
 *
 * @param foot of the face, y in mm
 * @param outermost edge of the face, y in mm
 * @param top of the face above the floor, where that is furthest below it, mm
 * @param clear in front of the outermost edge, mm
 */
public record FallZone(double foot, double outermost, double top, double clear) {
  /** Above it people fall further, mm. */
  public static final double HIGH = 3000;

  /** How far mats reach beyond a free end of the wall at least (common practice, no source), mm. */
  public static final double ASIDE = 1500;

  private static final double CLEAR = 2000;
  private static final double CLEAR_IF_HIGH = 2500;

  /**
   * The zone of a run, at the angle where it reaches furthest out and at that where it is highest.
   *
   * @param run facets that stand on each other, from the floor up
   */
  public static FallZone of(Layout layout, List<Facet> run) {
    RoomPlane floor = Ground.floor(layout);
    double outermost = Double.NEGATIVE_INFINITY;
    double top = 0;
    for (Vector3 place : edges(layout.wall(), run)) {
      Vector3 inRun = run.get(0).plane().floorAxes().fromRoom(place);
      outermost = Math.max(outermost, inRun.y());
      top = Math.max(top, floor.heightOver(place));
    }
    double foot = run.get(0).plane().out();
    return new FallZone(foot, outermost, top, top > HIGH ? CLEAR_IF_HIGH : CLEAR);
  }

  /** Where it ends, y in mm. */
  public double end() {
    return outermost + clear;
  }

  private static Stream<Vector3> ends(FacetAtAngle posed, double v) {
    return Stream.of(0.0, posed.facet().width()).map(u -> posed.at(new Vector3(u, v, 0)));
  }

  /** The ends of lower and upper edges of every facet, at every angle that it is used at. */
  private static List<Vector3> edges(Wall wall, List<Facet> run) {
    List<Double> angles =
        Swing.of(wall, run).map(swing -> Swing.angles(wall, swing.hinged())).orElse(List.of(0.0));
    return angles.stream()
        .flatMap(
            angle ->
                FacetAtAngle.of(wall, run, angle).stream()
                    .flatMap(
                        posed ->
                            Stream.of(0.0, posed.facet().length()).flatMap(v -> ends(posed, v))))
        .toList();
  }
}
