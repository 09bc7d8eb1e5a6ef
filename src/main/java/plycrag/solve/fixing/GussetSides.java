package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.geometry.Vector3;
import plycrag.units.Tape;

/**
 * Members under two opposite planes, flush in both.
 *
 * @param plane one of them
 * @param opposite the other
 * @param near the members under the one
 * @param far the same members under the other, in the same order
 */
record GussetSides(
    TimberFace plane, TimberFace opposite, List<GussetTimber> near, List<GussetTimber> far) {
  private static final double OPPOSITE = -0.999;

  /**
   * The members between a plane and the one across from it; empty where one of them is not flush in
   * both.
   *
   * @param under the members as they lie under a plane
   * @param body one of them
   */
  static Optional<GussetSides> of(
      TimberFace plane, Function<TimberFace, Optional<List<GussetTimber>>> under, TimberBody body) {
    return body.sides().stream()
        .filter(side -> side.outward().dot(plane.outward()) < OPPOSITE)
        .findFirst()
        .flatMap(
            opposite ->
                under
                    .apply(plane)
                    .flatMap(
                        near ->
                            under.apply(opposite).map(far -> both(plane, opposite, near, far))));
  }

  private static GussetSides both(
      TimberFace plane, TimberFace opposite, List<GussetTimber> near, List<GussetTimber> far) {
    List<GussetTimber> common =
        IntStream.range(0, near.size())
            .mapToObj(at -> near.get(at).withBoth(far.get(at).side()))
            .toList();
    return new GussetSides(plane, opposite, common, far);
  }

  /** A place on the one plane, taken straight through to the other. */
  private Vector3 over(Vector3 place) {
    return place.minus(plane.outward().times(plane.distance() + opposite.distance()));
  }

  /** Both rectangles, for each member along which their sides may run. */
  Stream<List<GussetDraft>> drafts(
      Map<GussetTimber, List<Vector3>> screws, double diameter, Tape tape) {
    Map<GussetTimber, List<Vector3>> through = across(screws);
    Map<GussetTimber, List<Vector3>> first = everySecond(screws, 0);
    Map<GussetTimber, List<Vector3>> second = everySecond(through, 1);
    return IntStream.range(0, near.size())
        .mapToObj(
            at ->
                List.of(
                    GussetDraft.of(near.get(at), plane.outward(), first, screws, diameter, tape),
                    GussetDraft.of(
                        far.get(at), opposite.outward(), second, through, diameter, tape)));
  }

  private Map<GussetTimber, List<Vector3>> across(Map<GussetTimber, List<Vector3>> screws) {
    Map<GussetTimber, List<Vector3>> through = new LinkedHashMap<>();
    for (int at = 0; at < near.size(); at++) {
      List<Vector3> places = screws.get(near.get(at));
      through.put(far.get(at), places.stream().map(this::over).toList());
    }
    return through;
  }

  private static Map<GussetTimber, List<Vector3>> everySecond(
      Map<GussetTimber, List<Vector3>> screws, int from) {
    Map<GussetTimber, List<Vector3>> some = new LinkedHashMap<>();
    screws.forEach(
        (timber, places) -> {
          List<Vector3> chosen = new ArrayList<>();
          for (int at = from; at < places.size(); at += 2) {
            chosen.add(places.get(at));
          }
          some.put(timber, chosen);
        });
    return some;
  }
}
