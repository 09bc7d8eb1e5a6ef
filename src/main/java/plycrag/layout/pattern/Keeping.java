package plycrag.layout.pattern;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Direction.Span;
import plycrag.solve.setout.ForbiddenStretch;

/** Where one kind of hindrance forbids inserts on one facet. */
interface Keeping {

  /** What is in the way of an insert here; only what falls short. */
  List<Obstacle> at(Point place);

  /** Whether nothing is. */
  default boolean isClear(Point place) {
    return at(place).isEmpty();
  }

  /**
   * What of an area is left for centres. Beside corners it may leave less than could be, never
   * more, the rounding to 1 µm apart.
   */
  Geometry clear(Geometry area);

  /** Where none of some lines may lie, between the outermost places. */
  List<ForbiddenStretch> keepouts(AreaLines lines);

  /** The outermost places of some lines, mm. */
  default Span bounds(AreaLines lines) {
    return new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }
}
