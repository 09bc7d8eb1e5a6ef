package plycrag.layout.pattern;

import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import plycrag.layout.skin.Axis;

/**
 * The columns or the rows of an area, which are moved as a whole.
 *
 * @param area whose lines they are
 * @param axis the way they run
 * @param isCrossing which things their set-out places itself, together with the lines
 */
record AreaLines(PatternArea area, Axis axis, Predicate<Avoided> isCrossing) {

  /** Where a box begins across the lines, mm. */
  double low(Envelope box) {
    return axis.other().low(box);
  }

  /** Where a box ends across the lines, mm. */
  double high(Envelope box) {
    return axis.other().high(box);
  }

  /** Whether something is nearer to the area along the lines than a reach, mm. */
  boolean meet(double low, double high, double reach) {
    Envelope box = area.box();
    return high + reach > axis.low(box) && low - reach < axis.high(box);
  }
}
