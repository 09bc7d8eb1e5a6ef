package plycrag.layout.support;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.units.Tape;

/**
 * Where a plate is fixed between what stands on it, with room there for a drill and a spanner.
 *
 * @param spacing the greatest distance that may be, mm
 * @param tape on whose marking grid the places lie
 */
record PlatePlaces(double spacing, Tape tape) {
  /**
   * In the middle between uprights, in as few bays as keep the distance that may be; in all where
   * that is too little.
   *
   * @param uprights what stands on it, from the left
   * @return along the plate, ascending, mm
   */
  List<Double> of(Envelope plate, List<Envelope> uprights) {
    List<Double> middles = new ArrayList<>();
    double from = plate.getMinX();
    for (Envelope upright : uprights) {
      addMiddle(from, upright.getMinX(), middles);
      from = Math.max(from, upright.getMaxX());
    }
    addMiddle(from, plate.getMaxX(), middles);
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < middles.size(); at++) {
      boolean isOuter = places.isEmpty() || at == middles.size() - 1;
      if (isOuter || middles.get(at + 1) - places.get(places.size() - 1) > spacing) {
        places.add(middles.get(at));
      }
    }
    return places;
  }

  private void addMiddle(double from, double to, List<Double> middles) {
    if (to - from >= 2 * Anchor.FROM_END) {
      middles.add(tape.snap((from + to) / 2));
    }
  }
}
