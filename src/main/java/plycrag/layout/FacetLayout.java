package plycrag.layout;

import java.util.List;
import plycrag.wall.Facet;

/**
 * A facet with everything in its place.
 *
 * @param facet the facet
 * @param footing how its frame meets the floor
 * @param pieces from the floor up, left to right
 * @param seams between them
 * @param members plates, studs, blocking, each in reading order
 * @param fastenerLines piece by piece
 * @param inserts row by row from the bottom, left to right
 * @param omissions inserts that were asked for and left out
 */
public record FacetLayout(
    Facet facet,
    Footing footing,
    List<Piece> pieces,
    List<Seam> seams,
    List<Member> members,
    List<FastenerLine> fastenerLines,
    List<Insert> inserts,
    List<Omission> omissions) {

  /** Copies the lists. */
  public FacetLayout {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    members = List.copyOf(members);
    fastenerLines = List.copyOf(fastenerLines);
    inserts = List.copyOf(inserts);
    omissions = List.copyOf(omissions);
  }

  /** All screws, line by line. */
  public List<Screw> screws() {
    return fastenerLines.stream().flatMap(line -> line.screws().stream()).toList();
  }
}
