package plycrag.layout.pattern;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import plycrag.finding.Measure;
import plycrag.geometry.Tolerance;
import plycrag.wall.Wall;

/**
 * All that hinders inserts on a facet. The set-out that moves lines, the scatter, what is left out
 * and the rules that judge the result ask the same questions here.
 *
 * <p>Every answer holds only what falls short. Cost: a look-up in a packed R-tree for each
 * hindrance.
 */
public final class InsertSurroundings {
  private final InsertSite site;

  /** In the order of the hindrances. */
  private final Map<Hindrance, Keeping> keepings;

  private InsertSurroundings(InsertSite site, Map<Hindrance, Keeping> keepings) {
    this.site = site;
    this.keepings = keepings;
  }

  /** What each of some hindrances forbids. */
  public static InsertSurroundings of(InsertSite site, List<Hindrance> hindrances) {
    Map<Hindrance, Keeping> keepings = new LinkedHashMap<>();
    hindrances.forEach(hindrance -> keepings.put(hindrance, hindrance.in(site)));
    return new InsertSurroundings(site, keepings);
  }

  /** The same once there are screws. */
  public InsertSurroundings with(List<Screw> screws) {
    InsertSite screwed = site.with(screws);
    Map<Hindrance, Keeping> later = new LinkedHashMap<>(keepings);
    later.replaceAll((one, keeping) -> one.comesLater() ? one.in(screwed) : keeping);
    return new InsertSurroundings(screwed, later);
  }

  /** What of one kind is too near to an insert here. */
  public List<Obstacle> of(Hindrance hindrance, Point place) {
    Keeping keeping = keepings.get(hindrance);
    if (keeping == null) {
      throw new IllegalArgumentException(hindrance.name() + " was not looked for");
    }
    return keeping.at(place);
  }

  /** Everything that stands in the way of an insert here, other inserts apart. */
  List<Obstacle> all(Point place) {
    return keepings.values().stream().flatMap(keeping -> keeping.at(place).stream()).toList();
  }

  /** What of that came after the inserts were set out. */
  List<Obstacle> later(Point place) {
    return keepings.keySet().stream()
        .filter(Hindrance::comesLater)
        .flatMap(hindrance -> of(hindrance, place).stream())
        .toList();
  }

  /** Whether nothing stands in the way of an insert here, other inserts apart. */
  boolean isClear(Point place) {
    return keepings.values().stream().allMatch(keeping -> keeping.isClear(place));
  }

  /** What of an area is clear for the centres of inserts. */
  Geometry clear(Geometry area) {
    Geometry clear = area;
    for (Keeping keeping : keepings.values()) {
      clear = keeping.clear(clear);
    }
    return clear;
  }

  InsertSite site() {
    return site;
  }

  /** What each hindrance forbids, in their order. */
  Iterable<Keeping> keepings() {
    return keepings.values();
  }

  /** The distance between the flanges of two inserts, against what is required. */
  public Measure between(Point place, Point other) {
    return new Measure(
        place.distance(other) - site.insert().body().flange(),
        site.clearance().flange().toFlange());
  }

  /** Whether a distance is too short by more than the rounding of its ends. */
  public static boolean fallsShort(Measure measure) {
    return measure.shortfall() > Tolerance.OFF_GRID;
  }

  /** The distance between the centres of two inserts within which they may be too near, mm. */
  public double reach() {
    return reach(site.wall());
  }

  static double reach(Wall wall) {
    return wall.inserts().body().flange() + wall.clearance().flange().toFlange();
  }

  /** Whether another answers the same because it was made of the same. */
  @Override
  public boolean equals(Object other) {
    return other instanceof InsertSurroundings surroundings
        && site.equals(surroundings.site)
        && keepings.keySet().equals(surroundings.keepings.keySet());
  }

  @Override
  public int hashCode() {
    return site.hashCode();
  }
}
