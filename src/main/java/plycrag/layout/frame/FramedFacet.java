package plycrag.layout.frame;

import java.util.List;
import plycrag.layout.skin.Piece;
import plycrag.layout.skin.Seam;
import plycrag.wall.Facet;

/**
 * A facet with its pieces and its frame; nothing has been screwed to it or drilled yet.
 *
 * @param facet the facet
 * @param footing how the frame meets the floor
 * @param pieces from the floor up, left to right
 * @param seams between them
 * @param members role by role, each in reading order
 */
public record FramedFacet(
    Facet facet, Footing footing, List<Piece> pieces, List<Seam> seams, List<Member> members) {
  /** Copies the lists. */
  public FramedFacet {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    members = List.copyOf(members);
  }
}
