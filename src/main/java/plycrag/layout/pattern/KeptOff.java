package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.solve.setout.ForbiddenStretch;
import plycrag.wall.Inserts;

/**
 * Things that inserts keep off. A line keeps off the boxes around them, since it is moved as a
 * whole.
 *
 * <p>Cost of a question: a look-up in a packed R-tree, and each thing near.
 */
final class KeptOff implements Keeping {
  private final Hindrance hindrance;
  private final Inserts insert;
  private final List<Avoided> things;
  private final SpatialIndex<Avoided> index;
  private final double reach;

  /**
   * Keeps inserts off things.
   *
   * @param things in the order in which they are told
   */
  KeptOff(Hindrance hindrance, Inserts insert, List<? extends Avoided> things) {
    this.hindrance = hindrance;
    this.insert = insert;
    this.things = List.copyOf(things);
    this.index = new SpatialIndex<>(this.things, Avoided::box);
    this.reach =
        things.stream()
            .flatMap(thing -> thing.margins().stream())
            .mapToDouble(margin -> margin.reach(insert))
            .max()
            .orElse(0);
  }

  @Override
  public List<Obstacle> at(Point place) {
    List<Obstacle> obstacles = new ArrayList<>();
    for (Avoided thing : index.near(place.getEnvelopeInternal(), reach)) {
      worst(place, thing).ifPresent(obstacles::add);
    }
    return obstacles;
  }

  @Override
  public boolean isClear(Point place) {
    return index.near(place.getEnvelopeInternal(), reach).stream()
        .flatMap(thing -> thing.margins().stream())
        .allMatch(margin -> margin.isKept(place, insert));
  }

  private Optional<Obstacle> worst(Point place, Avoided thing) {
    Obstacle worst = null;
    for (KeptDistance margin : thing.margins()) {
      Measure measure = margin.measure(place, insert);
      if (InsertSurroundings.fallsShort(measure)
          && (worst == null || measure.shortfall() > worst.measure().shortfall())) {
        worst = new Obstacle(hindrance, margin.part(), thing, measure);
      }
    }
    return Optional.ofNullable(worst);
  }

  @Override
  public Geometry clear(Geometry area) {
    List<Polygon> taken = new ArrayList<>();
    for (Avoided thing : index.near(area.getEnvelopeInternal(), reach)) {
      reaches(thing).forEach((extent, distance) -> taken.addAll(extent.widened(distance)));
    }
    return taken.isEmpty() ? area : Shapes.without(area, Shapes.together(taken));
  }

  /** The greatest distance from each of a thing's extents. */
  private Map<TakenRoom, Double> reaches(Avoided thing) {
    Map<TakenRoom, Double> reaches = new LinkedHashMap<>();
    for (KeptDistance margin : thing.margins()) {
      reaches.merge(margin.extent(), margin.reach(insert), Math::max);
    }
    return reaches;
  }

  @Override
  public List<ForbiddenStretch> keepouts(AreaLines lines) {
    Envelope box = lines.area().box();
    List<ForbiddenStretch> keepouts = new ArrayList<>();
    for (Avoided thing : things) {
      if (thing.keepsOff(lines.axis(), box) && !lines.isCrossing().test(thing)) {
        keepout(thing, lines).ifPresent(keepouts::add);
      }
    }
    return keepouts;
  }

  private Optional<ForbiddenStretch> keepout(Avoided thing, AreaLines lines) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    boolean meets = false;
    for (KeptDistance margin : thing.margins()) {
      Envelope box = margin.extent().box();
      double distance = margin.reach(insert);
      low = Math.min(low, lines.low(box) - distance);
      high = Math.max(high, lines.high(box) + distance);
      meets |= lines.meet(lines.axis().low(box), lines.axis().high(box), distance);
    }
    return meets ? Optional.of(new ForbiddenStretch(thing.called(), low, high)) : Optional.empty();
  }
}
