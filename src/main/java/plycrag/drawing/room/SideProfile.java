package plycrag.drawing.room;

import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
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
