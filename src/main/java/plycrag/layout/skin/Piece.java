package plycrag.layout.skin;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Triangulation;

/**
 * What is cut from one sheet. At a fold its edge may be bevelled, so that its two faces differ.
 *
 * @param mark {@code P1}, {@code P2}, … from the floor up, left to right
 * @param outline its front face in the facet's (u, v)
 * @param back its back face, likewise
 * @param blank what is to be cut square from a sheet before edges are bevelled: it covers both
 *     faces
 */
public record Piece(String mark, Polygon outline, Polygon back, Polygon blank) {

  /** The same under another mark. */
  Piece with(String other) {
    return new Piece(other, outline, back, blank);
  }

  /** The smallest box around its front face. */
  public Envelope box() {
    return outline.getEnvelopeInternal();
  }

  /** Whether all its edges are square to its faces. */
  public boolean isSquare() {
    return outline.equalsExact(back);
  }

  /** What the two faces share: nothing that goes through the piece may leave it. */
  public Polygon core() {
    return isSquare() ? outline : Shapes.largest(Shapes.sharedAreas(outline, back));
  }

  /**
   * Its body in the facet's (u, v, w), w behind the climbing face, in convex parts: whole if it is
   * convex, else what its two faces share.
   *
   * @param thickness of the sheet, mm
   */
  public List<Solid> bodies(double thickness) {
    if (Hulls.isConvex(outline) && Hulls.isConvex(back)) {
      return List.of(Solid.joining(outline, 0, back, thickness));
    }
    return Triangulation.of(core()).stream()
        .map(one -> Solid.between(one, 0, one, thickness))
        .toList();
  }
}
