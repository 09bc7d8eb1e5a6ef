package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Envelope;
import plycrag.catalog.ScrewCatalog;
import plycrag.catalog.SoldScrew.Use;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.units.Tape;

/** The smallest rectangle around screws with sides along and across one member. */
final class GussetDraft {
  /** Room for a driver over the head of a screw (common practice, no source), mm. */
  private static final double DRIVER = 120;

  private static final double DRIVER_RADIUS = 10;

  private final String parallelTo;
  private final FlatAxes axes;
  private final Vector3 outward;
  private final Map<GussetTimber, List<FacePlace>> screws;
  private final FacePlace low;
  private final FacePlace high;

  /**
   * @param parallelTo the mark of that member
   * @param axes along its sides, the second one rising
   * @param outward from the members to the gusset, of length one
   * @param screws of each member, on the marking grid of the rectangle's axes
   * @param low its lower left corner
   * @param high its upper right corner
   */
  GussetDraft(
      String parallelTo,
      FlatAxes axes,
      Vector3 outward,
      Map<GussetTimber, List<FacePlace>> screws,
      FacePlace low,
      FacePlace high) {
    this.parallelTo = parallelTo;
    this.axes = axes;
    this.outward = outward;
    this.screws = screws;
    this.low = low;
    this.high = high;
  }

  /**
   * The rectangle around all screws, with those of one side.
   *
   * @param straight the member along and across which its sides run
   * @param screws that are driven through it
   * @param all of both sides, on the plane of this one
   */
  static GussetDraft of(
      GussetTimber straight,
      Vector3 outward,
      Map<GussetTimber, List<Vector3>> screws,
      Map<GussetTimber, List<Vector3>> all,
      double diameter,
      Tape tape) {
    FlatAxes axes = straight.axes().upright();
    Map<GussetTimber, List<FacePlace>> around = onGrid(all, axes, tape);
    Vector3 along = axes.along();
    Vector3 across = axes.across();
    FacePlace low =
        new FacePlace(
            tape.snapDown(least(around, FacePlace::along, along, diameter)),
            tape.snapDown(least(around, FacePlace::across, across, diameter)));
    FacePlace high =
        new FacePlace(
            tape.snapUp(-least(around, spot -> -spot.along(), along, diameter)),
            tape.snapUp(-least(around, spot -> -spot.across(), across, diameter)));
    return new GussetDraft(
        straight.body().mark(), axes, outward, onGrid(screws, axes, tape), low, high);
  }

  private static Map<GussetTimber, List<FacePlace>> onGrid(
      Map<GussetTimber, List<Vector3>> screws, FlatAxes axes, Tape tape) {
    Map<GussetTimber, List<FacePlace>> onGrid = new LinkedHashMap<>();
    screws.forEach(
        (timber, places) ->
            onGrid.put(
                timber, places.stream().map(place -> snapped(axes.spot(place), tape)).toList()));
    return onGrid;
  }

  private static FacePlace snapped(FacePlace spot, Tape tape) {
    return new FacePlace(tape.snap(spot.along()), tape.snap(spot.across()));
  }

  /** How far on a way the plywood must reach around all screws. */
  private static double least(
      Map<GussetTimber, List<FacePlace>> screws,
      ToDoubleFunction<FacePlace> measure,
      Vector3 way,
      double diameter) {
    return screws.entrySet().stream()
        .mapToDouble(
            entry ->
                entry.getValue().stream().mapToDouble(measure).min().orElseThrow()
                    - entry.getKey().plywoodEdge(way) * diameter)
        .min()
        .orElseThrow();
  }

  double area() {
    return size().along() * size().across();
  }

  double longest() {
    return Math.max(size().along(), size().across());
  }

  private FacePlace size() {
    return high.minus(low);
  }

  /** Whether neither it nor a driver at its screws reaches into what is around. */
  boolean isClear(double thickness, RoomAround room) {
    return isClear(body(thickness), room.forGood())
        && screws.values().stream()
            .flatMap(List::stream)
            .allMatch(spot -> isClear(driver(spot, thickness), room.inTheMaking()));
  }

  private static boolean isClear(Solid one, Function<Envelope, List<Solid>> taken) {
    return taken.apply(one.elevation()).stream()
        .noneMatch(other -> one.overlapsByMoreThan(Tolerance.MARKED, other));
  }

  private Solid body(double thickness) {
    return axes.over(low, high, outward.times(thickness));
  }

  private Solid taken(double thickness, double bite) {
    Vector3 sunk = outward.times(-bite);
    return body(thickness + bite).mapped(sunk::plus);
  }

  private Solid driver(FacePlace screw, double thickness) {
    FacePlace radius = new FacePlace(DRIVER_RADIUS, DRIVER_RADIUS);
    Vector3 lifted = outward.times(thickness);
    return axes.over(screw.minus(radius), screw.plus(radius), outward.times(DRIVER))
        .mapped(lifted::plus);
  }

  /**
   * With the shortest screws that hold and do not come out; empty where there are none.
   *
   * @param least how long they must be, mm
   * @param beyond what they may be longer than the timber, mm
   */
  Optional<GussetFit> fit(double thickness, double diameter, double least, double beyond) {
    List<GussetScrew> placed = new ArrayList<>();
    Map<String, List<FacePlace>> faces = new LinkedHashMap<>();
    double timber = Double.POSITIVE_INFINITY;
    for (Map.Entry<GussetTimber, List<FacePlace>> entry : screws.entrySet()) {
      TimberBody body = entry.getKey().body();
      for (FacePlace spot : entry.getValue()) {
        placed.add(new GussetScrew(spot.minus(low), body.mark()));
        timber = Math.min(timber, body.through(axes.place(spot), outward.times(-1)));
      }
      faces.put(body.mark(), entry.getKey().seen(axes).map(spot -> spot.minus(low)).toList());
    }
    return ScrewCatalog.shortest(Use.SHEET, diameter, least, timber + beyond)
        .map(
            screw ->
                new GussetFit(
                    parallelTo,
                    size(),
                    placed,
                    diameter,
                    screw.length(),
                    faces,
                    body(thickness),
                    taken(thickness, screw.length() - thickness)));
  }
}
