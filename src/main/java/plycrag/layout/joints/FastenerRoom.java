package plycrag.layout.joints;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Solid;
import plycrag.solve.fixing.SteelPlace;

/** What fasteners take of the room, which grows as they are chosen. */
final class FastenerRoom {
  /** The sides of the squares by which bodies are looked up, mm. */
  private static final double SQUARE = 200;

  private final Map<List<Integer>, List<Solid>> bodies = new HashMap<>();

  FastenerRoom(Stream<Solid> taken) {
    taken.forEach(this::add);
  }

  void add(Solid body) {
    squares(body.elevation())
        .forEach(square -> bodies.computeIfAbsent(square, unseen -> new ArrayList<>()).add(body));
  }

  /** The bodies in and around a box seen along the room's y, some perhaps several times. */
  List<Solid> near(Envelope box) {
    return squares(box).flatMap(square -> bodies.getOrDefault(square, List.of()).stream()).toList();
  }

  /** Whether nothing is where a piece of steel and its screws would be. */
  boolean isFree(SteelPlace place) {
    return place.bodies().stream().allMatch(this::isFree);
  }

  /** Whether nothing is there. */
  boolean isFree(Solid body) {
    return near(body.elevation()).stream()
        .noneMatch(other -> body.overlapsByMoreThan(-SteelPlace.APART, other));
  }

  private static Stream<List<Integer>> squares(Envelope box) {
    return IntStream.rangeClosed(square(box.getMinX()), square(box.getMaxX()))
        .boxed()
        .flatMap(
            across ->
                IntStream.rangeClosed(square(box.getMinY()), square(box.getMaxY()))
                    .mapToObj(up -> List.of(across, up)));
  }

  private static int square(double at) {
    return (int) Math.floor(at / SQUARE);
  }
}
