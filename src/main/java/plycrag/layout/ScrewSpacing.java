package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.params.ClearanceParameters;
import plycrag.params.ScrewParameters;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Places the screws of one bearing.
 *
 * <p>Across, they lie on the member's middle, half as deep as they go, where the distances to the
 * piece's edges allow it, else on the middle of the bearing. Along, the first and the last keep
 * clear of the member's ends and as far from the piece's edges as the line itself does; the others
 * stand evenly between them, at the edge spacing where the member runs along an edge of the piece,
 * at the field spacing elsewhere.
 */
record ScrewSpacing(
    ScrewParameters screws,
    ClearanceParameters clearance,
    Tape tape,
    double width,
    double length,
    double thickness,
    double overhang) {
  private static final double TOLERANCE = 1e-6;

  static ScrewSpacing of(Wall wall, Facet facet) {
    return new ScrewSpacing(
        wall.screws(),
        wall.clearance(),
        wall.tape(),
        facet.width(),
        facet.length(),
        wall.sheet().thickness(),
        wall.overhang(facet));
  }

  /** The line's place on the axis across the member, mm. */
  double across(Bearing bearing) {
    Axis across = bearing.axis().other();
    double least = tape.snapUp(across.low(bearing.face()) + clearance.screwToSheetEdge());
    double most = tape.snapDown(across.high(bearing.face()) - clearance.screwToSheetEdge());
    double middle = across.middle(bearing.member().section(bite() / 2));
    double place = snapped(middle, across);
    if (place < least || place > most) {
      place = Math.max(least, Math.min(place, most));
    }
    return least <= most && isInside(place, across, bearing.member())
        ? place
        : snapped(across.middle(bearing.box()), across);
  }

  private double snapped(double place, Axis across) {
    return new Marking(tape, across == Axis.ACROSS ? width : length).snap(place);
  }

  /** Whether a screw keeps its distance from the member's sides all the way in. */
  private boolean isInside(double place, Axis across, Member member) {
    Envelope core = innermost(member);
    double side = Math.min(place - across.low(core), across.high(core) - place);
    return side >= clearance.screwToMemberEdge() - TOLERANCE;
  }

  /** How deep a screw goes into the timber, mm. */
  private double bite() {
    return screws.length() - thickness;
  }

  /** The screws' places along the member, ascending, mm. */
  List<Double> along(Bearing bearing) {
    Axis axis = bearing.axis();
    double inset =
        Math.max(clearance.screwToSheetEdge(), tape.snapDown(bearing.member().breadth() / 2));
    double first =
        Math.max(
            axis.low(bearing.face()) + inset,
            axis.low(innermost(bearing.member())) + clearance.screwToMemberEnd());
    double last =
        Math.min(
            axis.high(bearing.face()) - inset,
            axis.high(innermost(bearing.member())) - clearance.screwToMemberEnd());
    return even(tape.snapUp(first), tape.snapDown(last), bearing);
  }

  /** What of a member a screw meets all the way in, seen square to the face. */
  private Envelope innermost(Member member) {
    return member.box().intersection(member.section(Math.min(bite(), member.depth())));
  }

  private List<Double> even(double first, double last, Bearing bearing) {
    if (last < first) {
      return List.of(tape.snap(bearing.axis().middle(bearing.box())));
    }
    double greatest =
        tape.snapDown(bearing.isAtEdge(overhang) ? screws.edgeSpacing() : screws.fieldSpacing());
    int gaps = (int) Math.ceil((last - first) / greatest - TOLERANCE);
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < gaps; at++) {
      places.add(tape.snap(first + (last - first) * at / gaps));
    }
    places.add(last);
    return places;
  }
}
