package plycrag.layout.facet;

import java.util.List;
import plycrag.layout.frame.Footing;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.InsertSurroundings;
import plycrag.layout.pattern.Omission;
import plycrag.layout.pattern.PatternOutcome;
import plycrag.layout.pattern.Screw;
import plycrag.layout.screws.FastenerLine;
import plycrag.layout.screws.ScrewPoint;
import plycrag.layout.skin.Piece;
import plycrag.layout.skin.Seam;
import plycrag.wall.Facet;

/**
 * A facet with everything in its place.
 *
 * @param frame its pieces and its frame
 * @param joints of its members, and with the plates of the facet above
 * @param fastenerLines piece by piece
 * @param inserts row by row from the bottom, left to right
 * @param omissions inserts that were asked for and left out
 * @param screwPoints where holds may be screwed on, zone by zone
 * @param settings how the inserts came to their places: of its own pattern, then zone by zone
 * @param surroundings what stands around the inserts
 */
public record FacetLayout(
    FramedFacet frame,
    List<Joint> joints,
    List<FastenerLine> fastenerLines,
    List<Insert> inserts,
    List<Omission> omissions,
    List<ScrewPoint> screwPoints,
    List<PatternOutcome> settings,
    InsertSurroundings surroundings) {

  /** Copies the lists. */
  public FacetLayout {
    joints = List.copyOf(joints);
    fastenerLines = List.copyOf(fastenerLines);
    inserts = List.copyOf(inserts);
    omissions = List.copyOf(omissions);
    screwPoints = List.copyOf(screwPoints);
    settings = List.copyOf(settings);
  }

  /** The facet. */
  public Facet facet() {
    return frame.facet();
  }

  /** How its frame meets the floor. */
  public Footing footing() {
    return frame.footing();
  }

  /** From the floor up, left to right. */
  public List<Piece> pieces() {
    return frame.pieces();
  }

  /** Between the pieces. */
  public List<Seam> seams() {
    return frame.seams();
  }

  /** Plates, studs, blocking, each in reading order. */
  public List<Member> members() {
    return frame.members();
  }

  /** Whether there is room for a stud, without which it has no frame. */
  public boolean hasStuds() {
    return members().stream().anyMatch(member -> member.role() == MemberRole.STUD);
  }

  /** All screws, line by line. */
  public List<Screw> screws() {
    return fastenerLines.stream().flatMap(line -> line.screws().stream()).toList();
  }
}
