package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.structure.ClimberPlace.Pull;
import plycrag.solve.frame.FrameLoad;
import plycrag.solve.frame.LoadCase;
import plycrag.wall.room.GivenStructure.Climbing;

/**
 * What acts on a wall: its weight, one climber who moves at every place in turn and pulls every way
 * in turn, and others who hang still. These hang as high as they can on other uprights, each at
 * least {@link #APART} from all others along the wall, the nearest first.
 */
public final class LoadCases {
  /** The width of face that a climber takes, mm (assumption). */
  public static final double APART = 1500;

  private final Layout layout;
  private final List<ClimberPlace> places;
  private final Climbing climbing;
  private final List<FrameLoad> weight;
  private final List<FrameLoad> holds;
  private final boolean pressed;

  private LoadCases(Layout layout, StructureModel model, double angle) {
    this.layout = layout;
    this.climbing = layout.wall().structure().climbing();
    this.places = ClimberPlaces.of(layout, model, angle, climbing.reach());
    SelfWeight own = new SelfWeight(layout, model);
    this.weight = own.loads();
    this.holds = own.holds(layout.wall().structure().holds());
    this.pressed =
        !model.tethers().isEmpty()
            || layout.facets().stream().anyMatch(facet -> facet.facet().angle() < 0);
  }

  /**
   * Of a layout as a frame.
   *
   * @param angle of a facet that is hinged, degrees
   */
  public static List<WallCase> of(Layout layout, StructureModel model, double angle) {
    return new LoadCases(layout, model, angle).all();
  }

  /** Most of all loads, with the climber at the highest place. */
  public static WallCase highest(Layout layout, StructureModel model, double angle) {
    LoadCases cases = new LoadCases(layout, model, angle);
    return cases.places.stream()
        .reduce((one, other) -> other.tip().z() > one.tip().z() ? other : one)
        .map(place -> cases.climbed(Combination.HEAVY, place, Pull.DOWN))
        .orElseGet(() -> cases.alone(Combination.HEAVY));
  }

  /** How many hang still beside the one that moves. */
  public static int others(Layout layout) {
    double width = layout.runs().stream().mapToDouble(run -> run.get(0).facet().width()).sum();
    return layout.wall().structure().climbing().others().orElse((int) (width / APART));
  }

  private List<WallCase> all() {
    List<WallCase> cases = new ArrayList<>();
    cases.add(alone(Combination.PERMANENT));
    for (ClimberPlace place : places) {
      for (Pull pull : Pull.of(pressed)) {
        cases.add(climbed(Combination.HEAVY, place, pull));
        cases.add(climbed(Combination.LIGHT, place, pull));
      }
      cases.add(climbed(Combination.USE, place, Pull.DOWN));
    }
    return cases;
  }

  private WallCase alone(Combination combination) {
    return made(combination, "", own(combination));
  }

  private WallCase climbed(Combination combination, ClimberPlace place, Pull pull) {
    List<FrameLoad> loads = new ArrayList<>(own(combination));
    double still = combination.climbers() * climbing.weight();
    double moving = combination.isSudden() ? still * climbing.factor() : still;
    loads.add(place.load(place.force(pull, moving, climbing.sideways())));
    for (ClimberPlace other : others(place)) {
      loads.add(other.load(new Vector3(0, 0, -still)));
    }
    return made(combination, "climber at " + place.name() + " " + pull.words(), loads);
  }

  private static WallCase made(Combination combination, String words, List<FrameLoad> loads) {
    String name = combination.words() + " " + words;
    return new WallCase(combination, words, new LoadCase(name, loads));
  }

  private List<FrameLoad> own(Combination combination) {
    List<FrameLoad> loads = new ArrayList<>();
    weight.forEach(load -> loads.add(times(load, combination.weight())));
    if (combination.holds() > 0) {
      holds.forEach(load -> loads.add(times(load, combination.holds())));
    }
    return loads;
  }

  private static FrameLoad times(FrameLoad load, double factor) {
    FrameLoad.Spread spread = (FrameLoad.Spread) load;
    return new FrameLoad.Spread(spread.beam(), spread.force().times(factor));
  }

  private List<ClimberPlace> others(ClimberPlace moving) {
    List<ClimberPlace> taken = new ArrayList<>(List.of(moving));
    int count = others(layout);
    List<ClimberPlace> free = highest();
    while (taken.size() <= count) {
      Optional<ClimberPlace> next =
          free.stream()
              .filter(one -> taken.stream().allMatch(other -> apart(one, other) >= APART))
              .min(Comparator.comparingDouble(one -> apart(one, moving)));
      if (next.isEmpty()) {
        break;
      }
      taken.add(next.get());
    }
    return taken.subList(1, taken.size());
  }

  /** The highest place of each upright. */
  private List<ClimberPlace> highest() {
    Map<String, ClimberPlace> highest = new LinkedHashMap<>();
    places.forEach(
        place ->
            highest.merge(
                place.member(),
                place,
                (one, other) -> other.tip().z() > one.tip().z() ? other : one));
    double most = highest.values().stream().mapToDouble(place -> place.tip().z()).max().orElse(0);
    return highest.values().stream().filter(place -> place.tip().z() > most - UPPER).toList();
  }

  /** Who hangs still hangs at most so much lower than the highest place, mm. */
  private static final double UPPER = 500;

  private static double apart(ClimberPlace one, ClimberPlace other) {
    Vector3 way = one.tip().minus(other.tip());
    return new Vector3(way.x(), way.y(), 0).dot(one.along()) < 0
        ? -new Vector3(way.x(), way.y(), 0).dot(one.along())
        : new Vector3(way.x(), way.y(), 0).dot(one.along());
  }
}
