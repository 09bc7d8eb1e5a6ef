package plycrag.drawing.room;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.geometry.Tolerance;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Piece;

/** A facet in section: y of its run to the right, height up. */
final class SideProfile {
  private final FacetLayout facet;
  private final double thickness;

  /**
   * The section of one facet.
   *
   * @param facet the facet
   * @param thickness of its sheets, mm
   */
  SideProfile(FacetLayout facet, double thickness) {
    this.facet = facet;
    this.thickness = thickness;
  }

  private Xy at(double v, double behind) {
    return new Xy(facet.facet().plane().y(v, behind), facet.facet().plane().z(v, behind));
  }

  /** The sheets' edges, from the climbing face's lower one round. */
  List<Xy> sheets() {
    Envelope front = new Envelope();
    Envelope back = new Envelope();
    for (Piece piece : facet.pieces()) {
      front.expandToInclude(piece.box());
      back.expandToInclude(piece.back().getEnvelopeInternal());
    }
    return List.of(
        at(front.getMinY(), 0),
        at(front.getMaxY(), 0),
        at(back.getMaxY(), thickness),
        at(back.getMinY(), thickness));
  }

  /** How far up the facet its upper edge ends on the side where it ends lower, mm. */
  double lowerEnd() {
    Coordinate[] ring = facet.facet().boundary().getCoordinates();
    Envelope box = facet.facet().boundary().getEnvelopeInternal();
    return Math.min(highest(ring, box.getMinX()), highest(ring, box.getMaxX()));
  }

  private static double highest(Coordinate[] ring, double u) {
    return Stream.of(ring)
        .filter(corner -> Math.abs(corner.x - u) < Tolerance.TOUCH)
        .mapToDouble(corner -> corner.y)
        .max()
        .orElseThrow();
  }

  /** Across the sheet and the deepest member at a height up the facet, mm. */
  List<Xy> across(double v) {
    double depth = facet.members().stream().mapToDouble(Member::depth).max().orElse(0);
    return List.of(at(v, 0), at(v, thickness + depth));
  }

  /** A member's corners, from the lower one at the sheet round. */
  List<Xy> member(Member member) {
    Envelope near = member.box();
    Envelope far = member.far().getEnvelopeInternal();
    double deep = thickness + member.depth();
    return List.of(
        at(near.getMinY(), thickness),
        at(near.getMaxY(), thickness),
        at(far.getMaxY(), deep),
        at(far.getMinY(), deep));
  }

  /** The members that a section cuts across, one of each row. */
  List<Member> cutAcross() {
    TreeMap<Double, Member> rows = new TreeMap<>();
    for (Member member : facet.members()) {
      if (!member.role().isUpright() && member.isUpOrLevel()) {
        rows.putIfAbsent(member.box().getMinY(), member);
      }
    }
    return List.copyOf(rows.values());
  }
}
