package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.params.ClearanceParameters;
import plycrag.params.ScrewParameters;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Places the screws of one bearing.
 *
 * <p>Across, they lie on the member's middle where the distances to the piece's edges allow it,
 * else on the middle of the bearing. Along, the first and the last keep clear of the member's ends
 * and as far from the piece's edges as the line itself does; the others stand evenly between them,
 * at the edge spacing where the member runs along an edge of the piece, at the field spacing
 * elsewhere.
 */
record ScrewSpacing(
    ScrewParameters screws, ClearanceParameters clearance, Tape tape, double width, double length) {
  private static final double TOLERANCE = 1e-6;

  static ScrewSpacing of(Wall wall, Facet facet) {
    return new ScrewSpacing(
        wall.screws(), wall.clearance(), wall.tape(), facet.width(), facet.length());
  }

  /** The line's place on the axis across the member, mm. */
  double across(Bearing bearing) {
    Axis across = bearing.axis().other();
    double middle = across.middle(bearing.member().box());
    double room =
        Math.min(
            middle - across.low(bearing.piece().box()),
            across.high(bearing.piece().box()) - middle);
    double place =
        room >= clearance.screwToSheetEdge() - TOLERANCE ? middle : across.middle(bearing.box());
    return new Marking(tape, across == Axis.ACROSS ? width : length).snap(place);
  }

  /** The screws' places along the member, ascending, mm. */
  List<Double> along(Bearing bearing) {
    Axis axis = bearing.axis();
    double inset =
        Math.max(clearance.screwToSheetEdge(), tape.snapDown(bearing.member().breadth() / 2));
    double first =
        Math.max(
            axis.low(bearing.piece().box()) + inset,
            axis.low(bearing.member().box()) + clearance.screwToMemberEnd());
    double last =
        Math.min(
            axis.high(bearing.piece().box()) - inset,
            axis.high(bearing.member().box()) - clearance.screwToMemberEnd());
    return even(tape.snapUp(first), tape.snapDown(last), bearing);
  }

  private List<Double> even(double first, double last, Bearing bearing) {
    if (last < first) {
      return List.of(tape.snap(bearing.axis().middle(bearing.box())));
    }
    double greatest =
        tape.snapDown(bearing.isAtEdge() ? screws.edgeSpacing() : screws.fieldSpacing());
    int gaps = (int) Math.ceil((last - first) / greatest - TOLERANCE);
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < gaps; at++) {
      places.add(tape.snap(first + (last - first) * at / gaps));
    }
    places.add(last);
    return places;
  }
}
