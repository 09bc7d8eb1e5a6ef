package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Point;
import plycrag.units.Tape;

/**
 * Names holes by what a tape reads at their centres, across and up from the facet's left and lower
 * edge. Holes that would share a name are read to the marking grid.
 */
final class HoleMarks {
  private HoleMarks() {}

  /** A mark for each place, in order. */
  static List<String> of(String facet, List<Point> places, Tape tape) {
    Map<String, Integer> uses = new HashMap<>();
    places.forEach(place -> uses.merge(coarse(place, tape), 1, Integer::sum));
    List<String> marks = new ArrayList<>();
    for (Point place : places) {
      String coarse = coarse(place, tape);
      String reading = uses.get(coarse) == 1 ? coarse : fine(place, tape);
      marks.add(facet + " " + reading);
    }
    return marks;
  }

  private static String coarse(Point place, Tape tape) {
    return tape.division(place.getX()) + "/" + tape.division(place.getY());
  }

  private static String fine(Point place, Tape tape) {
    return tape.fineDivision(place.getX()) + "/" + tape.fineDivision(place.getY());
  }
}
