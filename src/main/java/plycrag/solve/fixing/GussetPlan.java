package plycrag.solve.fixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Vector3;
import plycrag.units.Tape;

/**
 * Lays a rectangle of plywood over members that meet with a side flush.
 *
 * <p>Every member hands on a force along itself, as through a strap. The screws keep the distances
 * of predrilled timber (EN 1995-1-1:2004 Table 8.2; between each other those of a panel on timber,
 * 8.3.1.3), and from the edges of the plywood those of a loaded one (8.3.1.3, from memory). The
 * thickest screws for which there is room are chosen, and of the rectangles along one of the
 * members the smallest that meets nothing.
 */
public final class GussetPlan {
  /** Screws through plywood, the thickest first (common practice, no source), mm. */
  public static final List<Double> METRIC = List.of(5.0, 4.5, 4.0, 3.5);

  /** The same where screws have numbers: 10, 8 and 6 (ASME B18.6.1), mm. */
  public static final List<Double> NUMBERED = List.of(4.826, 4.1656, 3.5052);

  /** A side longer than this is a sheet's rather than a gusset's (a choice), mm. */
  public static final double LARGEST = 600;

  /** Sides less apart than this lie flush, mm. */
  private static final double FLUSH = 1;

  private static final double SAME_WAY = 0.999;

  private final double thickness;
  private final double largest;
  private final int each;
  private final List<Double> diameters;
  private final double deep;
  private final double farSide;
  private final double reached;
  private final Tape tape;

  /**
   * Copies the diameters.
   *
   * @param thickness of the plywood, mm
   * @param largest a side of it may be, mm
   * @param each how many screws go into each member
   * @param diameters of the screws that may be room, the thickest first, mm
   * @param deep how deep a screw must go in, in diameters
   * @param farSide what must remain before the far side, mm
   * @param reached how deep the screws of the sheets end behind these, mm
   * @param tape on whose marking grid sides and screws are set
   */
  public GussetPlan(
      double thickness,
      double largest,
      int each,
      List<Double> diameters,
      double deep,
      double farSide,
      double reached,
      Tape tape) {
    this.thickness = thickness;
    this.largest = largest;
    this.each = each;
    this.diameters = List.copyOf(diameters);
    this.deep = deep;
    this.farSide = farSide;
    this.reached = reached;
    this.tape = tape;
  }

  /** The same with thinner screws alone. */
  public GussetPlan thinner(double diameter) {
    List<Double> left = diameters.stream().filter(one -> one < diameter).toList();
    return new GussetPlan(thickness, largest, each, left, deep, farSide, reached, tape);
  }

  /**
   * The gusset over all members that meet.
   *
   * @param room what it and a driver must keep out of
   */
  public Optional<GussetFit> over(List<MemberPair> meets, RoomAround room) {
    List<TimberBody> bodies = bodies(meets);
    for (double diameter : diameters) {
      for (TimberFace plane : bodies.get(0).sides()) {
        Optional<GussetFit> fit =
            timbers(bodies, plane, meets).flatMap(all -> fit(all, plane, diameter, room));
        if (fit.isPresent()) {
          return fit;
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The two gussets over all members that meet, alike and opposite each other, so that no force is
   * out of the members' plane. Their screws take turns, one from this side and the next from the
   * other, and keep the distances of screws of one side.
   *
   * @param room what they and a driver must keep out of
   */
  public Optional<List<GussetFit>> onBothSides(List<MemberPair> meets, RoomAround room) {
    List<TimberBody> bodies = bodies(meets);
    for (double diameter : diameters) {
      for (TimberFace plane : bodies.get(0).sides()) {
        Optional<List<GussetFit>> fit =
            GussetSides.of(plane, one -> timbers(bodies, one, meets), bodies.get(0))
                .flatMap(sides -> fit(sides, diameter, room));
        if (fit.isPresent()) {
          return fit;
        }
      }
    }
    return Optional.empty();
  }

  /** Around where they meet; of two members that have no room for that, beside it as well. */
  private Optional<List<GussetFit>> fit(GussetSides sides, double diameter, RoomAround room) {
    Optional<List<GussetFit>> around = fit(sides, diameter, room, List.of(0.0));
    return around.isPresent() || sides.near().size() > 2
        ? around
        : fit(sides, diameter, room, List.of(0.0, -1.0, 1.0));
  }

  private Optional<List<GussetFit>> fit(
      GussetSides sides, double diameter, RoomAround room, List<Double> shifts) {
    double least = thickness + deep * diameter;
    return choices(sides.near(), diameter, 2 * each, shifts).stream()
        .flatMap(screws -> sides.drafts(screws, diameter, tape))
        .sorted(Comparator.comparingDouble(pair -> pair.get(0).area()))
        .filter(pair -> pair.get(0).longest() <= largest)
        .filter(pair -> pair.stream().allMatch(draft -> draft.isClear(thickness, room)))
        .map(
            pair ->
                pair.stream()
                    .flatMap(
                        draft ->
                            draft.fit(thickness, diameter, least, thickness - farSide).stream())
                    .toList())
        .filter(pair -> pair.size() == 2 && pair.stream().allMatch(room::isFree))
        .findFirst();
  }

  private static List<TimberBody> bodies(List<MemberPair> meets) {
    return meets.stream()
        .flatMap(meet -> Stream.of(meet.first(), meet.second()))
        .distinct()
        .toList();
  }

  /** The members as they lie under a plane; empty if one has no side in it. */
  private Optional<List<GussetTimber>> timbers(
      List<TimberBody> bodies, TimberFace plane, List<MemberPair> meets) {
    Vector3 origin = middle(plane, meets);
    List<GussetTimber> timbers = new ArrayList<>();
    for (TimberBody body : bodies) {
      body.sides().stream()
          .filter(side -> isFlush(side, plane))
          .findFirst()
          .map(side -> GussetTimber.of(body, side, origin, meets, reached))
          .ifPresent(timbers::add);
    }
    return timbers.size() == bodies.size() ? Optional.of(timbers) : Optional.empty();
  }

  private static boolean isFlush(TimberFace side, TimberFace plane) {
    return side.outward().dot(plane.outward()) > SAME_WAY
        && Math.abs(side.distance() - plane.distance()) < FLUSH;
  }

  /** The middle of the ends that meet others, on a plane. */
  private static Vector3 middle(TimberFace plane, List<MemberPair> meets) {
    Vector3 sum = new Vector3(0, 0, 0);
    for (MemberPair meet : meets) {
      sum = sum.plus(meet.first().endAt(meet.second()));
    }
    Vector3 middle = sum.times(1.0 / meets.size());
    double off = plane.distance() - plane.outward().dot(middle);
    return middle.plus(plane.outward().times(off));
  }

  private Optional<GussetFit> fit(
      List<GussetTimber> timbers, TimberFace plane, double diameter, RoomAround room) {
    double least = thickness + deep * diameter;
    return choices(timbers, diameter, each, List.of(0.0)).stream()
        .flatMap(
            screws ->
                timbers.stream()
                    .map(
                        one ->
                            GussetDraft.of(one, plane.outward(), screws, screws, diameter, tape)))
        .sorted(Comparator.comparingDouble(GussetDraft::area))
        .filter(draft -> draft.longest() <= largest)
        .filter(draft -> draft.isClear(thickness, room))
        .flatMap(draft -> draft.fit(thickness, diameter, least, thickness - farSide).stream())
        .filter(room::isFree)
        .findFirst();
  }

  /** Every way to set out the screws of all members. */
  private List<Map<GussetTimber, List<Vector3>>> choices(
      List<GussetTimber> timbers, double diameter, int count, List<Double> shifts) {
    double play = tape.unit().markingGrid();
    List<Map<GussetTimber, List<Vector3>>> choices = List.of(Map.of());
    for (GussetTimber timber : timbers) {
      List<Map<GussetTimber, List<Vector3>>> longer = new ArrayList<>();
      for (List<Vector3> screws : timber.choices(diameter, count, play, shifts)) {
        choices.forEach(before -> longer.add(with(before, timber, screws)));
      }
      choices = longer;
    }
    return choices;
  }

  private static Map<GussetTimber, List<Vector3>> with(
      Map<GussetTimber, List<Vector3>> before, GussetTimber timber, List<Vector3> screws) {
    Map<GussetTimber, List<Vector3>> longer = new LinkedHashMap<>(before);
    longer.put(timber, screws);
    return longer;
  }
}
