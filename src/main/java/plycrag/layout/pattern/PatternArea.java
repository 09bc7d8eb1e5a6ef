package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Distances;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Axis;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Inserts.WhenBlocked;
import plycrag.wall.Pattern;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.Wall;
import plycrag.wall.Zone;

/**
 * Where a pattern lies: a facet apart from its zones, or one of its zones.
 *
 * @param wall which it is part of
 * @param facet on which it lies
 * @param zone which it is, if it is one
 * @param taken zones whose places are not its own
 */
public record PatternArea(Wall wall, Facet facet, Optional<Zone> zone, List<Polygon> taken) {
  public PatternArea {
    taken = List.copyOf(taken);
  }

  /** The facet itself, then its zones of inserts; each leaves its places to those after it. */
  public static List<PatternArea> of(Wall wall, Facet facet) {
    List<Zone> zones = wall.zones(facet, Points.INSERTS);
    List<PatternArea> areas = new ArrayList<>();
    areas.add(new PatternArea(wall, facet, Optional.empty(), shapes(zones)));
    for (int at = 0; at < zones.size(); at++) {
      List<Polygon> later = shapes(zones.subList(at + 1, zones.size()));
      areas.add(new PatternArea(wall, facet, Optional.of(zones.get(at)), later));
    }
    return areas;
  }

  private static List<Polygon> shapes(List<Zone> zones) {
    return zones.stream().map(Zone::shape).toList();
  }

  /** How holes are set out over it. */
  public Pattern pattern() {
    return zone.map(Zone::pattern).orElse(wall.inserts().pattern());
  }

  /** Whether its columns and rows are chosen together with the members that stand free. */
  public boolean isSetOutWithMembers() {
    return pattern().hasLines()
        || (pattern().kind() == Kind.FILE
            && wall.inserts().blocked().answer() == WhenBlocked.SOLVE);
  }

  /**
   * What happens where something stands in the way of its lines. Studs of facets that meet stay in
   * line where a support is to meet them; columns then move by themselves.
   *
   * @param lines the way they run
   */
  WhenBlocked whenBlocked(Axis lines) {
    WhenBlocked asked = wall.inserts().blocked().answer();
    boolean tied = lines == Axis.UP && isHeld() && !facet.folds().isEmpty();
    return tied && asked == WhenBlocked.SOLVE ? WhenBlocked.NUDGE : asked;
  }

  /** Whether a support is to meet its facet. */
  boolean isHeld() {
    return wall.support(facet).isPresent();
  }

  /** The listed places on it, on the marking grid, in the list's order. */
  List<Point> listed() {
    Tape tape = wall.tape();
    return wall.positions().stream()
        .filter(position -> position.facet().equals(facet.name()))
        .map(position -> Shapes.point(tape.snap(position.u()), tape.snap(position.v())))
        .filter(this::isOwn)
        .toList();
  }

  /** A zone's name; empty for the facet itself. */
  public String name() {
    return zone.map(Zone::name).orElse("");
  }

  /** {@code zone feet}, {@code facet main}. */
  String words() {
    return zone.map(one -> "zone " + one.name()).orElse("facet " + facet.name());
  }

  /** The smallest box around it, zones in it included. */
  Envelope box() {
    return zone.map(Zone::shape).orElse(facet.boundary()).getEnvelopeInternal();
  }

  /**
   * Whether a pattern asks for a hole at a place of its lines. They go on past slants and openings;
   * grids keep the setback from those, given lines are only left out where there is no face.
   */
  boolean asksFor(Point place) {
    double setback = pattern().kind() == Kind.LINES ? 0 : wall.inserts().setback();
    boolean isPlain = zone.isEmpty() && facet.isRectangle() && facet.cutouts().isEmpty();
    return (isPlain || isInside(place, facet.outline(), setback)) && isOwn(place);
  }

  /** Whether a place is its own, and not another zone's. */
  boolean isOwn(Point place) {
    return zone.stream().allMatch(one -> isInside(place, one.shape(), pattern().fit().setback()))
        && taken.stream().noneMatch(other -> Tolerance.isLess(Distances.from(place, other), 0));
  }

  private static boolean isInside(Point place, Polygon area, double setback) {
    return Tolerance.atLeast(-Distances.from(place, area), setback);
  }

  /** All places that are its own, whatever hinders an insert there. */
  public Geometry own() {
    Geometry own =
        zone.map(one -> Shapes.together(Offsets.narrowed(one.shape(), pattern().fit().setback())))
            .orElse(facet.outline());
    return taken.isEmpty() ? own : Shapes.without(own, Shapes.together(taken));
  }
}
